using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Rows that are stored as they are.</summary>
internal sealed class RawRows : PlaneRows
{
    private readonly SourceWindow window;

    public RawRows(ByteSource data, int width, int height, int bitDepth, OpenedSources opened, PlanePlace place)
        : base(width, height, bitDepth)
    {
        var needed = (long)RowBytes * height;
        if (data.Length < needed) throw place.Damaged(data.Length, FormattableString.Invariant($"The channel stores {data.Length} bytes where {needed} are needed."));
        window = new SourceWindow(data, opened, 0);
    }

    public override void Dispose() => window.Dispose();

    protected override void ReadNext(Span<byte> samples) => window.Take(RowBytes).CopyTo(samples);

    protected override void SkipNext(int first, int count) => window.Skip((long)count * RowBytes);
}
