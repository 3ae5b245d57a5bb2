using LayerTools.Model;
using LayerTools.Pixels.Compositing.Adjustments;
using LayerTools.Pixels.Compositing.Blending;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>An adjustment layer: the colours drawn so far, changed, are laid over themselves. What is transparent stays so.</summary>
internal sealed class AdjustmentStep(Bounds area, ColorAdjuster adjuster, Composition composition) : DrawStep(area)
{
    /// <summary>The same within a smaller area.</summary>
    public AdjustmentStep Within(Bounds bounds) => new(Area.Intersect(bounds), adjuster, composition);

    protected override void DrawRow(PixelRow target, int y, Workspace workspace)
    {
        var piece = workspace.Piece;
        for (var x = Area.Left; x < Area.Right; x += Workspace.PieceLength)
        {
            var count = Math.Min(Workspace.PieceLength, Area.Right - x);
            if (target.IsTransparent(x - target.Left, count)) continue;
            target.StraightenTo(x - target.Left, piece, count);
            adjuster.Adjust(piece, count);
            piece.Alpha.AsSpan(0, count).Fill(1f);
            piece.Left = x;
            composition.Draw(target, piece, y, count, workspace);
        }
    }
}
