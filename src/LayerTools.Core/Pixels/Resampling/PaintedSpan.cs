using System.Runtime.InteropServices;

namespace LayerTools.Pixels.Resampling;

/// <summary>Finds the stretch of a row outside of which all samples are 0.</summary>
internal static class PaintedSpan
{
    /// <param name="row">The row's bytes.</param>
    /// <param name="sampleBytes">Bytes of a sample.</param>
    /// <returns>The first sample of the stretch and the one after its last; nothing from 0 to 0 for an empty row.</returns>
    public static (int From, int To) Find(ReadOnlySpan<byte> row, int sampleBytes)
    {
        var from = CountZeros(row);
        if (from == row.Length) return (0, 0);
        var to = row.Length;
        while (row[to - 1] == 0) to--;
        return (from / sampleBytes, (to + sampleBytes - 1) / sampleBytes);
    }

    private static int CountZeros(ReadOnlySpan<byte> row)
    {
        var words = MemoryMarshal.Cast<byte, ulong>(row);
        var count = 0;
        while (count < words.Length && words[count] == 0) count++;
        count *= sizeof(ulong);
        while (count < row.Length && row[count] == 0) count++;
        return count;
    }
}
