namespace LayerTools.Pixels.Compositing;

/// <summary>Samples that are got ready band by band while a picture is drawn from top to bottom.</summary>
internal abstract class RowWindow : IDisposable
{
    /// <summary>Bytes that a canvas row takes while it is ready.</summary>
    public abstract long RowBytes { get; }

    /// <summary>The first canvas row that is needed.</summary>
    public abstract int FirstRow { get; }

    /// <summary>The canvas row after the last that is needed.</summary>
    public abstract int EndRow { get; }

    public bool Touches(int top, int bottom) => top < EndRow && bottom > FirstRow;

    /// <summary>Gets the canvas rows from <paramref name="top"/> up to <paramref name="bottom"/> ready; bands come in order and without gaps.</summary>
    public abstract void MoveTo(int top, int bottom);

    /// <summary>Frees the rows once the band they belong to is drawn and no other will need them.</summary>
    public abstract void Release(int bottom);

    public abstract void Dispose();
}
