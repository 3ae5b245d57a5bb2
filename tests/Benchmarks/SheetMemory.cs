using System.Diagnostics;
using System.Globalization;

namespace LayerTools.Benchmarks;

/// <summary>What a process holds at most while it writes one sheet.</summary>
internal static class SheetMemory
{
    /// <summary>Prints the largest working set of the whole process, in bytes.</summary>
    public static void Print(string path)
    {
        Work.WriteSheet(Work.ReadTree(path), "sheet.png");
        using var process = Process.GetCurrentProcess();
        Console.WriteLine(process.PeakWorkingSet64.ToString(CultureInfo.InvariantCulture));
    }
}
