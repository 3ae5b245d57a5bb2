using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Deliveries;

/// <summary>The rows of a channel in the file's own samples, bits as whole bytes; a missing channel has full samples.</summary>
internal sealed class SampleRows : IDisposable
{
    private readonly PlaneRows? rows;
    private readonly byte[] packed;
    private readonly byte[] samples;

    public SampleRows(PixelReader reader, Layer layer, PlaneRole role, Bounds bounds, int bitDepth)
    {
        rows = reader.OpenRows(layer, role);
        SampleBytes = Math.Max(1, bitDepth / 8);
        samples = new byte[checked(bounds.Width * SampleBytes)];
        packed = bitDepth == 1 && rows is not null ? new byte[rows.RowBytes] : samples;
        if (rows is null) samples.AsSpan().Fill(byte.MaxValue);
    }

    /// <summary>Bytes of one sample.</summary>
    public int SampleBytes { get; }

    /// <summary>The next row; valid, and free to be changed, until the next call.</summary>
    public byte[] ReadNext()
    {
        if (rows is null) return samples;
        rows.ReadRow(packed);
        if (rows.BitDepth == 1) SampleConverter.ToBytes(packed, samples, 1, isLight: false);
        return samples;
    }

    public void Skip(int count) => rows?.SkipRows(count);

    public void Dispose() => rows?.Dispose();
}
