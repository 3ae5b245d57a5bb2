using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>The rows of a channel in the file's own samples, bits as whole bytes; a missing channel has full samples.</summary>
internal sealed class SampleRows : IDisposable
{
    private const int OneAsFloat = 0x3F800000;

    private readonly PlaneRows? rows;
    private readonly byte[] packed;
    private readonly byte[] samples;

    /// <exception cref="LayeredFileException">The channel is damaged or larger than any canvas, or the file changed on disk.</exception>
    public SampleRows(LayerFile file, PixelReader reader, Layer layer, PlaneRole role, Bounds bounds)
    {
        if (bounds.Width > AreaReducer.LargestSide || bounds.Height > AreaReducer.LargestSide)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"layer '{layer.LayerPath}'", -1,
                FormattableString.Invariant($"A rectangle of it has a side of more than {AreaReducer.LargestSide} px."), "Cut the layer to what is painted.");
        }

        rows = reader.OpenRows(layer, role);
        SampleBytes = Math.Max(1, file.BitDepth / 8);
        samples = new byte[bounds.Width * SampleBytes];
        packed = file.BitDepth == 1 && rows is not null ? new byte[rows.RowBytes] : samples;
        if (rows is null) Fill();
    }

    /// <summary>Bytes of one sample.</summary>
    public int SampleBytes { get; }

    /// <summary>The next row; valid until the next call. That of a channel that is there may be changed.</summary>
    public byte[] ReadNext()
    {
        if (rows is null) return samples;
        rows.ReadRow(packed);
        if (rows.BitDepth == 1) SampleConverter.ToBytes(packed, samples, 1, isLight: false);
        return samples;
    }

    public void Skip(int count) => rows?.SkipRows(count);

    /// <summary>Reads all rows; the smallest rectangle that holds all samples that are not made of a byte.</summary>
    /// <param name="bounds">The channel's rectangle.</param>
    /// <param name="plain">The byte.</param>
    /// <param name="cancellation">Stops the work.</param>
    public Bounds FindDiffering(Bounds bounds, byte plain, CancellationToken cancellation)
    {
        var differing = Bounds.Empty;
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            var row = ReadNext();
            var first = FindFirstOther(row, plain);
            if (first < 0) continue;
            var last = FindLastOther(row, plain);
            differing = differing.Union(new Bounds(bounds.Left + (first / SampleBytes), y, bounds.Left + (last / SampleBytes) + 1, y + 1));
        }

        return differing;
    }

    public void Dispose() => rows?.Dispose();

    /// <summary>The place of the first byte that is another one; -1 if there is none.</summary>
    public static int FindFirstOther(ReadOnlySpan<byte> row, byte plain)
    {
#if NET8_0_OR_GREATER
        return row.IndexOfAnyExcept(plain);
#else
        for (var i = 0; i < row.Length; i++)
        {
            if (row[i] != plain) return i;
        }

        return -1;
#endif
    }

    /// <summary>The place of the last byte that is another one; -1 if there is none.</summary>
    public static int FindLastOther(ReadOnlySpan<byte> row, byte plain)
    {
#if NET8_0_OR_GREATER
        return row.LastIndexOfAnyExcept(plain);
#else
        var last = row.Length - 1;
        while (last >= 0 && row[last] == plain) last--;
        return last;
#endif
    }

    private void Fill()
    {
        samples.AsSpan().Fill(byte.MaxValue);
        for (var i = 0; SampleBytes == 4 && i < samples.Length; i += 4) BinaryPrimitives.WriteInt32BigEndian(samples.AsSpan(i), OneAsFloat);
    }
}
