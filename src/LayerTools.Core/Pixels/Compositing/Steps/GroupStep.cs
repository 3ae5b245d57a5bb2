using LayerTools.Model;
using LayerTools.Pixels.Compositing.Blending;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>Steps that are put together apart from what lies below, then joined to it as one: an isolated group, or a layer with what is clipped to it.</summary>
internal sealed class GroupStep(Bounds area, IReadOnlyList<DrawStep> steps, Composition composition) : DrawStep(area)
{
    protected override void DrawRow(PixelRow target, int y, Workspace workspace)
    {
        var together = workspace.Rent();
        together.Clear(Area.Left, Area.Right);
        foreach (var step in steps) step.Draw(together, y, workspace);

        var piece = workspace.Piece;
        for (var x = Area.Left; x < Area.Right; x += Workspace.PieceLength)
        {
            var count = Math.Min(Workspace.PieceLength, Area.Right - x);
            if (together.IsTransparent(x - together.Left, count)) continue;
            together.StraightenTo(x - together.Left, piece, count);
            piece.Left = x;
            composition.Draw(target, piece, y, count, workspace);
        }

        workspace.Return(together);
    }
}
