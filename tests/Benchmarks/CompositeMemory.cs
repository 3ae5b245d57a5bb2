using System.Diagnostics;
using System.Globalization;

namespace LayerTools.Benchmarks;

/// <summary>How much a process grows when it draws a figure once, the raster included.</summary>
internal static class CompositeMemory
{
    /// <summary>Prints the bytes: the peak working set less what was held with the tree read.</summary>
    public static void Print(string path)
    {
        var file = Work.ReadTree(path);
        using var process = Process.GetCurrentProcess();
        var before = process.WorkingSet64;
        var raster = Work.Composite(file);
        process.Refresh();
        GC.KeepAlive(raster);
        Console.WriteLine((process.PeakWorkingSet64 - before).ToString(CultureInfo.InvariantCulture));
    }
}
