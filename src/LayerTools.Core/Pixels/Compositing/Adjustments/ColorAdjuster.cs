namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>Changes colours, as an adjustment layer does.</summary>
internal abstract class ColorAdjuster
{
    /// <summary>Changes the colours of the first <paramref name="count"/> pixels, which are not premultiplied; alpha stays.</summary>
    public abstract void Adjust(PixelRow pixels, int count);
}
