using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>
/// A layer that cuts through. In its shape, which is its pixels' opacity with masks and the layer's opacity but without fill opacity, it puts the backdrop with the
/// layer upon it in the place of what was there. (The shape and opacity of knockout groups in ISO 32000, applied to one layer.)
/// </summary>
/// <param name="area">Where the layer draws.</param>
/// <param name="backdrop">What it cuts through to; null for nothing at all.</param>
/// <param name="content">The layer with its mode and fill opacity; null if it is not filled at all.</param>
/// <param name="shape">The layer in normal mode with its opacity.</param>
internal sealed class KnockoutStep(Bounds area, BackdropSlot? backdrop, DrawStep? content, DrawStep shape) : DrawStep(area)
{
    protected override void DrawRow(PixelRow target, int y, Workspace workspace)
    {
        var behind = workspace.Rent();
        var cut = workspace.Rent();
        if (backdrop is null) behind.Clear(Area.Left, Area.Right);
        else workspace.GetBackdrop(backdrop).CopyTo(behind);
        cut.Clear(Area.Left, Area.Right);
        content?.Draw(behind, y, workspace);
        shape.Draw(cut, y, workspace);
        target.Fade(behind, cut.Alpha, Area.Left, Area.Width);
        workspace.Return(behind);
        workspace.Return(cut);
    }
}
