using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Deliveries;

/// <summary>
/// The painted rows of a layer in the file's own samples, each cut to what is not fully transparent in it, with colours cleared where a pixel is: so the same pixels give the
/// same rows however they are stored. Colours of rows without any pixel are not unpacked.
/// </summary>
internal sealed class PaintedRows : IDisposable
{
    private readonly SampleRows alpha;
    private readonly List<SampleRows> colors = [];
    private readonly byte[][] rows;
    private readonly int left;
    private readonly int width;

    /// <param name="file">The file.</param>
    /// <param name="reader">Its open channels.</param>
    /// <param name="layer">A layer.</param>
    /// <param name="painted">What is painted of it; not empty.</param>
    public PaintedRows(LayerFile file, PixelReader reader, Layer layer, Bounds painted)
    {
        alpha = new SampleRows(file, reader, layer, PlaneRole.Alpha, layer.Bounds);
        Roles = [.. layer.Planes.Select(plane => plane.Role).Where(role => role >= PlaneRole.Color0).OrderBy(role => role)];
        foreach (var role in Roles) colors.Add(new SampleRows(file, reader, layer, role, layer.Bounds));
        rows = new byte[1 + colors.Count][];
        (left, width) = ((painted.Left - layer.Bounds.Left) * alpha.SampleBytes, painted.Width * alpha.SampleBytes);
        alpha.Skip(painted.Top - layer.Bounds.Top);
        foreach (var color in colors) color.Skip(painted.Top - layer.Bounds.Top);
    }

    /// <summary>The colour channels there are.</summary>
    public IReadOnlyList<PlaneRole> Roles { get; }

    /// <summary>Channels of a row: opacity, and each of <see cref="Roles"/>.</summary>
    public int ChannelCount => rows.Length;

    /// <summary>Where the row that was read begins, bytes from the left edge of what is painted.</summary>
    public int Start { get; private set; }

    /// <summary>How long it is, bytes; 0 if it has no pixel.</summary>
    public int Count { get; private set; }

    /// <summary>Where it begins in <see cref="Row"/>.</summary>
    public int Offset => left + Start;

    /// <summary>The array with a channel of the row that was read; <see cref="Offset"/> and <see cref="Count"/> say what of it.</summary>
    public byte[] Row(int channel) => rows[channel];

    public ReadOnlySpan<byte> Span(int channel) => rows[channel].AsSpan(Offset, Count);

    /// <summary>Reads the next row.</summary>
    public void ReadNext()
    {
        rows[0] = alpha.ReadNext();
        var opacity = rows[0].AsSpan(left, width);
        var (first, last) = (SampleRows.FindFirstOther(opacity, 0), SampleRows.FindLastOther(opacity, 0));
        var sampleBytes = alpha.SampleBytes;
        Start = first < 0 ? 0 : first / sampleBytes * sampleBytes;
        Count = first < 0 ? 0 : ((last / sampleBytes) + 1) * sampleBytes - Start;
        for (var i = 0; i < colors.Count; i++)
        {
            if (Count == 0)
            {
                colors[i].Skip(1);
                continue;
            }

            rows[i + 1] = colors[i].ReadNext();
            Blank(rows[i + 1].AsSpan(Offset, Count), Span(0), sampleBytes);
        }
    }

    public void Dispose()
    {
        alpha.Dispose();
        foreach (var color in colors) color.Dispose();
    }

    /// <summary>Clears the samples of a colour where nothing is painted: programs keep there whatever they like.</summary>
    private static void Blank(Span<byte> color, ReadOnlySpan<byte> alpha, int sampleBytes)
    {
        for (var x = 0; x < alpha.Length;)
        {
            var next = alpha.Slice(x).IndexOf((byte)0);
            if (next < 0) return;
            x = (x + next) / sampleBytes * sampleBytes;
            var clear = SampleRows.FindFirstOther(alpha.Slice(x), 0);
            var end = clear < 0 ? alpha.Length : x + (clear / sampleBytes * sampleBytes);
            color.Slice(x, end - x).Clear();
            x = Math.Max(end, x + sampleBytes);
        }
    }
}
