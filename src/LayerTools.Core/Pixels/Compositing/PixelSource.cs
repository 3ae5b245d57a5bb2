namespace LayerTools.Pixels.Compositing;

/// <summary>Where a layer's pixels come from.</summary>
internal abstract class PixelSource
{
    /// <summary>How opaque a run of pixels is, as far as that can be told at no cost.</summary>
    public abstract Coverage GetCoverage(int y, int x, int count);

    /// <summary>Writes the colours of a run of pixels, not premultiplied, into a row from index <paramref name="at"/> on.</summary>
    public abstract void ReadColors(PixelRow row, int at, int y, int x, int count);

    /// <summary>Writes the opacity of a run of pixels.</summary>
    public abstract void ReadAlpha(Span<float> samples, int y, int x);
}
