namespace LayerTools.Pixels.Parts;

/// <summary>The rows of a part's colours as bytes of red, green and blue, one after the other from the top.</summary>
internal abstract class PartColors : IDisposable
{
    /// <summary>The row that was read last.</summary>
    public abstract ReadOnlySpan<byte> Red { get; }

    public abstract ReadOnlySpan<byte> Green { get; }

    public abstract ReadOnlySpan<byte> Blue { get; }

    public abstract void ReadNext();

    public abstract void SkipNext();

    public abstract void Dispose();
}
