using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>One thing to draw, row by row: a layer, or steps that are drawn together.</summary>
internal abstract class DrawStep(Bounds area)
{
    /// <summary>Outside this rectangle, in canvas px, the step draws nothing.</summary>
    public Bounds Area { get; } = area;

    /// <summary>Draws canvas row <paramref name="y"/> into the premultiplied row <paramref name="target"/>, which spans at least <see cref="Area"/>.</summary>
    public void Draw(PixelRow target, int y, Workspace workspace)
    {
        if (y >= Area.Top && y < Area.Bottom) DrawRow(target, y, workspace);
    }

    protected abstract void DrawRow(PixelRow target, int y, Workspace workspace);
}
