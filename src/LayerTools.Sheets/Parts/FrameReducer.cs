using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Parts;

namespace LayerTools.Sheets.Parts;

/// <summary>Makes a small picture of a frame from the rows of something that lies in it, perhaps not wholly.</summary>
internal sealed class FrameReducer
{
    private readonly Bounds frame;
    private readonly Bounds source;
    private readonly Bounds common;
    private readonly AreaReducer reducer;
    private readonly byte[][]? wide;
    private int nextY;

    /// <param name="target">The picture.</param>
    /// <param name="source">The rectangle whose rows come in, all of them from the top.</param>
    public FrameReducer(PictureTarget target, Bounds source)
    {
        (frame, this.source) = (target.Frame, source);
        common = frame.Intersect(source);
        reducer = new AreaReducer(frame.Width, frame.Height, target.Width, target.Height);
        if (source.Left != frame.Left || source.Right != frame.Right) wide = [.. Enumerable.Range(0, 4).Select(_ => new byte[frame.Width])];
        nextY = source.Top;
        for (var y = frame.Top; y < (common.IsEmpty ? frame.Bottom : common.Top); y++) reducer.AddBlankRow();
    }

    public void AddRow(ReadOnlySpan<byte> red, ReadOnlySpan<byte> green, ReadOnlySpan<byte> blue, ReadOnlySpan<byte> alpha)
    {
        if (!Advance()) return;
        if (wide is null)
        {
            reducer.AddRow(red, green, blue, alpha);
            return;
        }

        Widen(red, wide[0]);
        Widen(green, wide[1]);
        Widen(blue, wide[2]);
        Widen(alpha, wide[3]);
        reducer.AddRow(wide[0], wide[1], wide[2], wide[3]);
    }

    public void AddBlankRow()
    {
        if (Advance()) reducer.AddBlankRow();
    }

    public Raster Finish()
    {
        if (!common.IsEmpty)
        {
            for (var y = common.Bottom; y < frame.Bottom; y++) reducer.AddBlankRow();
        }

        return reducer.Finish();
    }

    /// <summary>Whether the next row lies in the frame.</summary>
    private bool Advance()
    {
        var y = nextY++;
        return y >= common.Top && y < common.Bottom;
    }

    private void Widen(ReadOnlySpan<byte> row, byte[] to) => row.Slice(common.Left - source.Left, common.Width).CopyTo(to.AsSpan(common.Left - frame.Left));
}
