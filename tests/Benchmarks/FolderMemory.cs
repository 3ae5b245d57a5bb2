using System.Diagnostics;
using System.Globalization;

namespace LayerTools.Benchmarks;

/// <summary>How much a process holds while it checks one file after the other, as a nightly run over a folder does.</summary>
internal static class FolderMemory
{
    private const int FirstFiles = 10;

    private const int Files = 100;

    /// <summary>Prints the largest working set after the first ten files and after all hundred, in bytes.</summary>
    public static void Print(string path)
    {
        var early = 0L;
        for (var i = 1; i <= Files; i++)
        {
            Work.Check(path);
            if (i == FirstFiles) early = Peak();
        }

        Console.WriteLine(string.Join(" ", new[] { early, Peak() }.Select(bytes => bytes.ToString(CultureInfo.InvariantCulture))));
    }

    private static long Peak()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64;
    }
}
