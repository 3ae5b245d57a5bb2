using System.Buffers;
using LayerTools.Model;

namespace LayerTools.Pixels.Compositing;

/// <summary>The rows of one stored channel that the current band needs. Opened when a band first reaches the channel, read once from top to bottom, closed after its last row.</summary>
internal sealed class PlaneWindow : RowWindow
{
    private readonly PixelReader reader;
    private readonly Layer layer;
    private readonly PlaneRole role;
    private readonly int bitDepth;
    private readonly int firstRow;
    private readonly int endRow;
    private PlaneRows? rows;
    private byte[] buffer = [];
    private int bufferTop;

    /// <summary>A window on a channel, still closed.</summary>
    /// <param name="reader">Where the channel is read.</param>
    /// <param name="layer">The layer whose channel it is.</param>
    /// <param name="role">Which of its channels.</param>
    /// <param name="bitDepth">Bits of one sample.</param>
    /// <param name="area">Canvas rectangle whose samples will be asked for; rows above and below are not read.</param>
    public PlaneWindow(PixelReader reader, Layer layer, PlaneRole role, int bitDepth, Bounds area)
    {
        this.reader = reader;
        this.layer = layer;
        this.role = role;
        this.bitDepth = bitDepth;
        Bounds = layer.GetPlaneBounds(role);
        firstRow = Math.Max(Bounds.Top, area.Top);
        endRow = Math.Min(Bounds.Bottom, area.Bottom);
    }

    /// <summary>The rectangle the channel's samples fill, canvas px.</summary>
    public Bounds Bounds { get; }

    public override long RowBytes => ((long)Bounds.Right - Bounds.Left) * SampleBytes;

    public override int FirstRow => firstRow;

    public override int EndRow => endRow;

    private int SampleBytes => bitDepth / 8;

    public override void MoveTo(int top, int bottom)
    {
        var from = Math.Max(top, firstRow);
        var to = Math.Min(bottom, endRow);
        rows ??= Open();
        var rowBytes = checked((int)RowBytes);
        var needed = checked(rowBytes * (to - from));
        if (buffer.Length < needed)
        {
            Forget();
            buffer = ArrayPool<byte>.Shared.Rent(needed);
        }

        for (var row = from; row < to; row++) rows.ReadRow(buffer.AsSpan((row - from) * rowBytes, rowBytes));
        bufferTop = from;
        if (to == endRow) Close();
    }

    public override void Release(int bottom)
    {
        if (bottom >= endRow) Forget();
    }

    /// <summary>The stored samples of a run of pixels, all of which must lie inside <see cref="Bounds"/>.</summary>
    public ReadOnlySpan<byte> GetStored(int y, int x, int count) =>
        buffer.AsSpan(checked(((y - bufferTop) * (int)RowBytes) + ((x - Bounds.Left) * SampleBytes)), count * SampleBytes);

    /// <summary>The samples of a run of pixels inside <see cref="Bounds"/>, 0 to 1; only colours of 32 bits may lie outside that.</summary>
    public void Read(int y, int x, Span<float> samples)
    {
        Samples.Decode(GetStored(y, x, samples.Length), bitDepth, samples);
        if (bitDepth != 32 || role >= PlaneRole.Color0) return;
        for (var i = 0; i < samples.Length; i++) samples[i] = Math.Max(0f, Math.Min(1f, samples[i]));
    }

    /// <summary>The samples of any run of pixels, with one value for all that lies outside <see cref="Bounds"/>.</summary>
    public void Read(int y, int x, Span<float> samples, float outside)
    {
        var from = Math.Max(x, Bounds.Left);
        var to = Math.Min(x + samples.Length, Bounds.Right);
        if (y < firstRow || y >= endRow || from >= to)
        {
            samples.Fill(outside);
            return;
        }

        samples.Slice(0, from - x).Fill(outside);
        Read(y, from, samples.Slice(from - x, to - from));
        samples.Slice(to - x).Fill(outside);
    }

    public override void Dispose()
    {
        Close();
        Forget();
    }

    private PlaneRows Open()
    {
        var opened = reader.OpenRows(layer, role) ?? throw new InvalidOperationException("Only channels that the layer has get a window.");
        opened.SkipRows(firstRow - Bounds.Top);
        return opened;
    }

    private void Forget()
    {
        if (buffer.Length > 0) ArrayPool<byte>.Shared.Return(buffer);
        buffer = [];
    }

    private void Close()
    {
        rows?.Dispose();
        rows = null;
    }
}
