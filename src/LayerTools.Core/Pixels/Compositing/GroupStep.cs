using System.Numerics;
using LayerTools.Model;

namespace LayerTools.Pixels.Compositing;

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
            if (IsTransparent(together.Alpha.AsSpan(x - together.Left, count))) continue;
            Straighten(together, x - together.Left, piece, count);
            piece.Left = x;
            composition.Draw(target, piece, y, count, workspace);
        }

        workspace.Return(together);
    }

    internal static bool IsTransparent(ReadOnlySpan<float> alpha)
    {
        foreach (var value in alpha)
        {
            if (value != 0f) return false;
        }

        return true;
    }

    /// <summary>Takes pixels out of premultiplication, so that a group mixes as a layer does.</summary>
    internal static void Straighten(PixelRow premultiplied, int at, PixelRow straight, int count)
    {
        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var alpha = new Vector<float>(premultiplied.Alpha, at + i);
            var isSeen = Vector.GreaterThan(alpha, Vector<float>.Zero);
            alpha.CopyTo(straight.Alpha, i);
            for (var channel = 0; channel < straight.Colors.Length; channel++)
            {
                var color = new Vector<float>(premultiplied.Colors[channel], at + i) / alpha;
                Vector.ConditionalSelect(isSeen, color, Vector<float>.Zero).CopyTo(straight.Colors[channel], i);
            }
        }
    }
}
