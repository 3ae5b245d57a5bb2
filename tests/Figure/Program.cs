using System.Diagnostics;
using LayerTools.Figure;
using LayerTools.Figure.Parts;

FigureOptions options;
try
{
    options = FigureOptions.Parse(args);
}
catch (ArgumentException error)
{
    Console.Error.WriteLine(error.Message);
    Console.Error.WriteLine(FigureOptions.Usage);
    return 2;
}

var watch = Stopwatch.StartNew();
var tree = Keeper.Create(options.Layers);
if (options.PngPath is { } png)
{
    Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(png))!);
    Preview.Write(png, tree, options.Scale / 4);
    Console.WriteLine($"{png} shows the figure at a quarter of its size.");
}

Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(options.Path))!);
var result = FigureWriter.Write(Path.GetFullPath(options.Path), tree, options.Scale);
foreach (var warning in result.Warnings) Console.WriteLine(warning);
Console.WriteLine(FormattableString.Invariant(
    $"{options.Path}: {tree.Sum(part => part.CountLayers())} layers besides groups, {new FileInfo(options.Path).Length / 1e6:0.0} MB, drawn in {watch.Elapsed.TotalSeconds:0.0} s."));
return 0;
