using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Measures;

/// <summary>Counts the pixels of a layer that are not fully transparent.</summary>
internal static class PaintedPixels
{
    /// <summary>The number of painted pixels; all of the layer's rectangle if it has no alpha.</summary>
    /// <exception cref="Errors.LayeredFileException">The layer's alpha is damaged, or the file changed on disk.</exception>
    public static long Count(PixelReader reader, Layer layer)
    {
        if (layer.Planes.Count == 0 || layer.Bounds.IsEmpty) return 0;
        using var rows = reader.OpenRows(layer, PlaneRole.Alpha);
        if (rows is null) return layer.Bounds.Area;
        var row = new byte[rows.RowBytes];
        var count = 0L;
        for (var y = 0; y < rows.Height; y++)
        {
            rows.ReadRow(row);
            count += rows.BitDepth == 1 ? CountBits(row, rows.Width) : CountSamples(row, rows.BitDepth / 8);
        }

        return count;
    }

    private static int CountSamples(ReadOnlySpan<byte> row, int sampleBytes)
    {
        var count = 0;
        for (var i = 0; i < row.Length; i += sampleBytes)
        {
            // In any depth, a sample of nothing but zero bytes is the fully transparent one.
            var any = row[i];
            for (var j = 1; j < sampleBytes; j++) any |= row[i + j];
            if (any != 0) count++;
        }

        return count;
    }

    private static int CountBits(ReadOnlySpan<byte> row, int width)
    {
        var count = 0;
        for (var x = 0; x < width; x++) count += (row[x >> 3] >> (7 - (x & 7))) & 1;
        return count;
    }
}
