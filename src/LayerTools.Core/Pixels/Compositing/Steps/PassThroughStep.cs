using System.Numerics;
using LayerTools.Model;
using LayerTools.Pixels.Compositing.Blending;

namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>A group whose layers mix with what lies below it one by one. Its opacity and mask fade between the picture without the group and the picture with it.</summary>
internal sealed class PassThroughStep(Bounds area, IReadOnlyList<DrawStep> steps, Composition fade) : DrawStep(area)
{
    /// <summary>What the steps may draw on, which can be more than the group's mask leaves.</summary>
    private readonly Bounds reach = steps.Aggregate(area, (all, step) => all.Union(step.Area));

    protected override void DrawRow(PixelRow target, int y, Workspace workspace)
    {
        if (fade.Replaces)
        {
            foreach (var step in steps) step.Draw(target, y, workspace);
            return;
        }

        var before = workspace.Rent();
        Copy(target, before);
        foreach (var step in steps) step.Draw(target, y, workspace);

        var weights = workspace.Piece.Alpha;
        for (var x = Area.Left; x < Area.Right; x += Workspace.PieceLength)
        {
            var count = Math.Min(Workspace.PieceLength, Area.Right - x);
            weights.AsSpan(0, count).Fill(1f);
            fade.Weaken(weights, x, y, count, workspace);
            workspace.Piece.ClearTail(count);
            var at = x - target.Left;
            for (var channel = 0; channel < target.Colors.Length; channel++) Fade(before.Colors[channel], target.Colors[channel], at, weights, count);
            Fade(before.Alpha, target.Alpha, at, weights, count);
            if (fade.Limits is not { HasExcluded: true }) continue;
            before.CopyTo(at, workspace.Before, count);
            fade.Limits.Restore(target, at, workspace.Before, count);
        }

        Restore(before, target, reach.Left, Area.Left);
        Restore(before, target, Area.Right, reach.Right);
        workspace.Return(before);
    }

    private static void Restore(PixelRow before, PixelRow target, int left, int right)
    {
        var start = left - target.Left;
        for (var channel = 0; channel < target.Colors.Length; channel++) Array.Copy(before.Colors[channel], start, target.Colors[channel], start, right - left);
        Array.Copy(before.Alpha, start, target.Alpha, start, right - left);
    }

    private static void Fade(float[] before, float[] after, int at, float[] weights, int count)
    {
        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var old = new Vector<float>(before, at + i);
            (old + ((new Vector<float>(after, at + i) - old) * new Vector<float>(weights, i))).CopyTo(after, at + i);
        }
    }

    /// <summary>Copies one vector past what is drawn on too, which fading then leaves as it was.</summary>
    private void Copy(PixelRow from, PixelRow to)
    {
        var start = reach.Left - from.Left;
        var length = reach.Width + Vector<float>.Count;
        for (var channel = 0; channel < from.Colors.Length; channel++) Array.Copy(from.Colors[channel], start, to.Colors[channel], start, length);
        Array.Copy(from.Alpha, start, to.Alpha, start, length);
    }
}
