using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>Draws nothing and keeps the row as it is now, for layers in front that cut through to it.</summary>
internal sealed class KeepStep(Bounds area, BackdropSlot slot) : DrawStep(area)
{
    protected override void DrawRow(PixelRow target, int y, Workspace workspace) => target.CopyTo(workspace.GetBackdrop(slot));
}
