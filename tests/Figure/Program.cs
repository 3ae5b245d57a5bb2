using System.Diagnostics;
using LayerTools.Errors;
using LayerTools.Figure;
using LayerTools.Figure.Parts;

try
{
    Run(FigureOptions.Parse(args));
    return 0;
}
catch (ArgumentException error)
{
    Console.Error.WriteLine(error.Message);
    Console.Error.WriteLine(FigureOptions.Usage);
    return 2;
}
catch (LayeredFileException error)
{
    Console.Error.WriteLine(error.Message);
    return 1;
}

static void Run(FigureOptions options)
{
    var path = Path.GetFullPath(options.Path);
    if (!options.IsDrawn)
    {
        var watch = Stopwatch.StartNew();
        var tree = Keeper.Create(options.Layers);
        CreateFolder(path);
        foreach (var warning in FigureWriter.Write(path, tree, options.Scale).Warnings) Console.WriteLine(warning);
        Console.WriteLine(FormattableString.Invariant(
            $"{options.Path}: {tree.Sum(part => part.CountLayers())} layers besides groups, {new FileInfo(path).Length / 1e6:0.0} MB, drawn in {watch.Elapsed.TotalSeconds:0.0} s."));
    }

    if (options.PngPath is not { } png) return;
    CreateFolder(Path.GetFullPath(png));
    MergedPreview.Write(path, png);
    Console.WriteLine($"{png}: the merged picture of {options.Path}, at a quarter of its size.");
}

static void CreateFolder(string path) => Directory.CreateDirectory(Path.GetDirectoryName(path)!);
