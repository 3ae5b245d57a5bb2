using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>A feathered mask. Since each row needs those around it, all of it is made when the first band reaches it and held, in 16 bits, to its last row.</summary>
internal sealed class SoftWindow : RowWindow
{
    private readonly Layer layer;
    private readonly Bounds bounds;
    private readonly Bounds kept;
    private readonly float outside;
    private readonly double sigma;
    private readonly Func<Bounds, IEnumerable<float[]>> readRows;
    private ushort[] samples = [];

    /// <summary>A feathered mask, not yet made.</summary>
    /// <param name="layer">The layer it belongs to, for errors.</param>
    /// <param name="inner">Where the sharp mask is not <paramref name="outside"/>, canvas px.</param>
    /// <param name="area">Where samples will be asked for.</param>
    /// <param name="outside">The mask's value everywhere else, 0 to 1.</param>
    /// <param name="sigma">The standard deviation of the blur, px.</param>
    /// <param name="readRows">Gives the sharp mask's rows in a rectangle, from the top; each may be used until the next is asked for.</param>
    public SoftWindow(Layer layer, Bounds inner, Bounds area, float outside, double sigma, Func<Bounds, IEnumerable<float[]>> readRows)
    {
        (this.layer, this.outside, this.sigma, this.readRows) = (layer, outside, sigma, readRows);
        var reach = GaussianBlur.GetReach(sigma);
        bounds = Grow(inner, reach).Intersect(Grow(area, reach));
        var needed = bounds.Intersect(area);
        (FirstRow, EndRow) = (needed.Top, needed.Bottom);
        kept = new Bounds(needed.Left, bounds.Top, needed.Right, bounds.Bottom);
    }

    public override long RowBytes => kept.Width * (long)sizeof(ushort);

    public override int FirstRow { get; }

    public override int EndRow { get; }

    public override void MoveTo(int top, int bottom)
    {
        if (samples.Length == 0) samples = Create();
    }

    public override void Release(int bottom)
    {
        if (bottom >= EndRow) samples = [];
    }

    public override void Dispose() => samples = [];

    /// <summary>The samples of any run of pixels, 0 to 1.</summary>
    public void Read(int y, int x, Span<float> values)
    {
        values.Fill(outside);
        if (y < FirstRow || y >= EndRow) return;
        var from = Math.Max(x, kept.Left);
        var to = Math.Min(x + values.Length, kept.Right);
        var start = ((y - kept.Top) * kept.Width) - kept.Left;
        for (var column = from; column < to; column++) values[column - x] = samples[start + column] / (float)ushort.MaxValue;
    }

    private static Bounds Grow(Bounds bounds, int by) => bounds.IsEmpty ? bounds : new Bounds(Subtract(bounds.Left, by), Subtract(bounds.Top, by), Subtract(bounds.Right, -by), Subtract(bounds.Bottom, -by));

    private static int Subtract(int value, int by) => (int)Math.Max(int.MinValue, Math.Min(int.MaxValue, (long)value - by));

    private ushort[] Create()
    {
        if (kept.Area > int.MaxValue / sizeof(float))
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, layer.FilePath, $"layer '{layer.LayerPath}'", -1,
                FormattableString.Invariant($"Its feathered mask covers {kept.Width} × {kept.Height} px, too many to be blurred at once."), "Apply the mask where the file was made, or make it smaller.");
        }

        return GaussianBlur.Blur(readRows(bounds), bounds.Width, bounds.Height, kept.Left - bounds.Left, kept.Width, outside, sigma);
    }
}
