namespace LayerTools.Pixels.Parts;

/// <summary>The rows of a channel as bytes, whatever its depth. Rows that nobody looks at are passed over without being unpacked.</summary>
internal sealed class ByteRows : IDisposable
{
    private readonly PlaneRows? rows;
    private readonly bool isLight;
    private readonly byte missing;
    private readonly byte[] samples;
    private readonly byte[] bytes;
    private int skipped;

    /// <param name="rows">The channel, or null if the layer has none.</param>
    /// <param name="width">Columns, px.</param>
    /// <param name="missing">What each pixel of a missing channel is.</param>
    /// <param name="isLight">Whether the channel holds colours.</param>
    public ByteRows(PlaneRows? rows, int width, byte missing, bool isLight)
    {
        this.rows = rows;
        this.isLight = isLight;
        this.missing = missing;
        bytes = new byte[width];
        samples = rows is null || rows.BitDepth == 8 ? bytes : new byte[rows.RowBytes];
    }

    /// <summary>The row that was read last.</summary>
    public ReadOnlySpan<byte> Current => bytes;

    /// <summary>The next row; valid, and free to be changed, until the next call.</summary>
    public Span<byte> ReadNext()
    {
        if (rows is null)
        {
            bytes.AsSpan().Fill(missing);
            return bytes;
        }

        rows.SkipRows(skipped);
        skipped = 0;
        rows.ReadRow(samples);
        if (samples != bytes) SampleConverter.ToBytes(samples, bytes, rows.BitDepth, isLight);
        return bytes;
    }

    public void SkipNext(int count = 1) => skipped += count;

    public void Dispose() => rows?.Dispose();
}
