using LayerTools.Model;
using LayerTools.Pixels.Compositing.Blending;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>A layer's own pixels, stored or described.</summary>
internal sealed class LayerStep(Bounds area, PixelSource pixels, Composition composition) : DrawStep(area)
{
    protected override void DrawRow(PixelRow target, int y, Workspace workspace)
    {
        var piece = workspace.Piece;
        for (var x = Area.Left; x < Area.Right; x += Workspace.PieceLength)
        {
            var count = Math.Min(Workspace.PieceLength, Area.Right - x);
            switch (pixels.GetCoverage(y, x, count))
            {
                case Coverage.None:
                    break;
                case Coverage.Full when composition.Replaces:
                    pixels.ReadColors(target, x - target.Left, y, x, count);
                    target.Alpha.AsSpan(x - target.Left, count).Fill(1f);
                    break;
                default:
                    piece.Left = x;
                    pixels.ReadColors(piece, 0, y, x, count);
                    pixels.ReadAlpha(piece.Alpha.AsSpan(0, count), y, x);
                    composition.Draw(target, piece, y, count, workspace);
                    break;
            }
        }
    }
}
