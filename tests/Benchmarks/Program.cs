using System.Globalization;
using BenchmarkDotNet.Running;
using LayerTools.Benchmarks;

if (args is ["compare", var path]) Comparison.Print(Path.GetFullPath(path));
else if (args is ["delivery", var figure]) Comparison.PrintDelivery(Path.GetFullPath(figure));
else if (args is ["composite-memory", var drawn]) CompositeMemory.Print(Path.GetFullPath(drawn));
else if (args is ["folder-memory", var one]) FolderMemory.Print(Path.GetFullPath(one));
else if (args is ["sheet-memory", var shown]) SheetMemory.Print(Path.GetFullPath(shown));
else if (args is ["magick-thumbnails", var small, var side]) MagickThumbnails.Print(Path.GetFullPath(small), uint.Parse(side, CultureInfo.InvariantCulture));
else if (args is ["magick", var read, var bytes]) MagickComparison.Print(Path.GetFullPath(read), long.Parse(bytes, CultureInfo.InvariantCulture));
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
