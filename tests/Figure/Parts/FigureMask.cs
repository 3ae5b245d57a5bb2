using LayerTools.Figure.Drawing;

namespace LayerTools.Figure.Parts;

/// <summary>A user mask: what it paints shows, what it leaves hides, or the other way round when inverted.</summary>
internal sealed record FigureMask(Action<Brush> Draw)
{
    public bool IsDisabled { get; init; }

    public bool IsInverted { get; init; }
}
