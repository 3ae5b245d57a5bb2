using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>A layer and what is clipped to it, each mixing for itself with what lies below; the base's shape, without its opacity, cuts the others.</summary>
/// <param name="area">Where the base draws.</param>
/// <param name="below">The base with its own mode and opacity; null if it is fully transparent.</param>
/// <param name="shape">The base in normal mode and full opacity.</param>
/// <param name="clipped">What is clipped, back to front, as if it were not.</param>
internal sealed class ApartStep(Bounds area, DrawStep? below, DrawStep shape, IReadOnlyList<DrawStep> clipped) : DrawStep(area)
{
    protected override void DrawRow(PixelRow target, int y, Workspace workspace)
    {
        var cut = workspace.Rent();
        var drawn = workspace.Rent();
        cut.Clear(Area.Left, Area.Right);
        shape.Draw(cut, y, workspace);
        below?.Draw(target, y, workspace);
        foreach (var step in clipped)
        {
            target.CopyTo(drawn);
            step.Draw(drawn, y, workspace);
            target.Fade(drawn, cut.Alpha, Area.Left, Area.Width);
        }

        workspace.Return(drawn);
        workspace.Return(cut);
    }
}
