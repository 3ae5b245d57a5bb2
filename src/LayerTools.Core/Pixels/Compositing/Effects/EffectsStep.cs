using System.Numerics;
using LayerTools.Model.Effects;
using LayerTools.Pixels.Compositing.Blending;
using LayerTools.Pixels.Compositing.Steps;

namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>
/// A layer, or a group, with its effects. Opacity acts on all of it, fill opacity on the layer's own pixels alone. What lies on the layer is
/// mixed as if the layer filled each pixel, and the result then weighed by how much of the pixel it fills; an outline around it fills the
/// rest. So soft edges show no fringe of what lies below.
/// </summary>
/// <param name="effects">Its effects.</param>
/// <param name="steps">The layer, and then what is clipped to it.</param>
/// <param name="composition">How the layer joins what lies below it, its masks and its fill opacity aside.</param>
/// <param name="fillOpacity">0 to 1.</param>
/// <param name="mixesInside">Whether fills and halos on the layer are mixed with its own pixels first, so that its blend mode and fill opacity act on them too.</param>
/// <param name="seeThrough">Whose opacity the layer's own pixels have inside its shape; null for opaque ones.</param>
internal sealed class EffectsStep(LayerEffects effects, IReadOnlyList<DrawStep> steps, Composition composition, float fillOpacity, bool mixesInside, PixelSource? seeThrough) : DrawStep(effects.Area)
{
    private readonly IReadOnlyList<PlacedEffect> behind = [.. effects.Items.Where(item => item.Effect is ShadeEffect { IsInward: false })];
    private readonly IReadOnlyList<PlacedEffect> within = [.. effects.Items.Where(item => mixesInside && IsInterior(item.Effect))];
    private readonly IReadOnlyList<PlacedEffect> on = [.. effects.Items.Where(item => IsInterior(item.Effect) ? !mixesInside : item.Effect is ShadeEffect { IsInward: true } or OutlineEffect { Place: not OutlinePlace.Outside })];
    private readonly IReadOnlyList<PlacedEffect> aroundFromFront = [.. effects.Items.Where(item => item.Effect is OutlineEffect { Place: not OutlinePlace.Inside }).Reverse()];

    protected override void DrawRow(PixelRow target, int y, Workspace workspace)
    {
        var together = workspace.Rent();
        together.Clear(Area.Left, Area.Right);
        foreach (var step in steps) step.Draw(together, y, workspace);
        for (var x = Area.Left; x < Area.Right; x += Workspace.PieceLength)
        {
            var count = Math.Min(Workspace.PieceLength, Area.Right - x);
            var at = x - target.Left;
            var hasExcluded = composition.Limits is { HasExcluded: true };
            if (hasExcluded) target.CopyTo(at, workspace.Before, count);
            Array.Copy(together.Alpha, x - together.Left, workspace.Shape, 0, count);
            foreach (var item in behind) DrawBehind(item, target, y, x, count, workspace);
            DrawLayerAndAround(target, together, y, x, count, workspace);
            if (hasExcluded) composition.Limits!.Restore(target, at, workspace.Before, count);
        }

        workspace.Return(together);
    }

    private static bool IsInterior(Effect effect) => effect is FillEffect or ShadeEffect { IsInward: true, IsHalo: true };

    private static bool IsEmpty(float[] weights, int count) => PixelRow.AreZero(weights.AsSpan(0, count));

    /// <summary>Reads an effect's paint, as opaque as its plane says, into the piece; false if it is not seen here.</summary>
    private static bool TryRead(PlacedEffect item, ShapePlane? plane, int y, int x, int count, Workspace workspace)
    {
        var piece = workspace.Piece;
        var weights = workspace.MaskValues;
        if (plane is not null)
        {
            plane.Read(y, x, weights.AsSpan(0, count));
            if (IsEmpty(weights, count)) return false;
        }

        piece.Left = x;
        item.Paint.ReadColors(piece, 0, y, x, count);
        item.Paint.ReadAlpha(piece.Alpha.AsSpan(0, count), y, x);
        for (var i = 0; i < count; i++) piece.Alpha[i] *= item.Effect.Opacity * (plane is null ? 1f : weights[i]);
        return true;
    }

    private static void Copy(PixelRow from, int at, PixelRow to, int count)
    {
        var length = count + Vector<float>.Count;
        for (var channel = 0; channel < from.Colors.Length; channel++) Array.Copy(from.Colors[channel], at, to.Colors[channel], 0, length);
        Array.Copy(from.Alpha, at, to.Alpha, 0, length);
    }

    private void Mix(Blender mode, PixelRow target, int at, PixelRow piece, int y, int count)
    {
        mode.Settle(piece.Alpha, piece.Left, y, count);
        piece.ClearTail(count);
        if (composition.Inside) mode.DrawInside(target, at, piece, count);
        else mode.DrawOver(target, at, piece, count);
    }

    private void DrawBehind(PlacedEffect item, PixelRow target, int y, int x, int count, Workspace workspace)
    {
        if (item.Outside is null || !TryRead(item, item.Outside, y, x, count, workspace)) return;
        var alpha = workspace.Piece.Alpha;
        var isHidden = ((ShadeEffect)item.Effect).IsHiddenByLayer;
        for (var i = 0; i < count; i++) alpha[i] *= composition.Opacity * (isHidden ? 1f - workspace.Shape[i] : 1f);
        Mix(item.Blender, target, x - target.Left, workspace.Piece, y, count);
    }

    private void DrawLayerAndAround(PixelRow target, PixelRow together, int y, int x, int count, Workspace workspace)
    {
        var at = x - target.Left;
        var (trial, result, shape, free) = (workspace.Trial, workspace.Result, workspace.Shape, workspace.Free);
        Copy(target, at, result, count);
        var isChanged = false;
        if (!IsEmpty(shape, count))
        {
            Copy(target, at, trial, count);
            MixLayer(together, y, x, count, workspace);
            Add(target, at, trial, shape, result, count);
            isChanged = true;
        }

        for (var i = 0; i < count; i++) free[i] = 1f - shape[i];
        foreach (var item in aroundFromFront)
        {
            if (item.Outside is null || !TryRead(item, null, y, x, count, workspace)) continue;
            var weights = workspace.MaskValues;
            item.Outside.Read(y, x, weights.AsSpan(0, count));
            if (IsEmpty(weights, count)) continue;
            for (var i = 0; i < count; i++)
            {
                weights[i] = Math.Min(weights[i], free[i]);
                free[i] -= weights[i];
            }

            Copy(target, at, trial, count);
            Mix(item.Blender, trial, 0, workspace.Piece, y, count);
            Add(target, at, trial, weights, result, count);
            isChanged = true;
        }

        if (!isChanged) return;
        for (var channel = 0; channel < target.Colors.Length; channel++) Array.Copy(result.Colors[channel], 0, target.Colors[channel], at, count);
        Array.Copy(result.Alpha, 0, target.Alpha, at, count);
    }

    /// <summary>Mixes the layer and what lies on it into the trial piece, as if the layer filled every pixel that it touches.</summary>
    private void MixLayer(PixelRow together, int y, int x, int count, Workspace workspace)
    {
        var piece = workspace.Piece;
        piece.Left = x;
        together.StraightenTo(x - together.Left, piece, count);
        if (within.Count > 0) MixWithin(y, x, count, workspace);
        if (seeThrough is null) piece.Alpha.AsSpan(0, count).Fill(fillOpacity);
        else seeThrough.ReadAlpha(piece.Alpha.AsSpan(0, count), y, x);
        for (var i = 0; i < count; i++)
        {
            if (workspace.Shape[i] <= 0) piece.Alpha[i] = 0f;
            else if (seeThrough is not null) piece.Alpha[i] *= fillOpacity;
        }

        Mix(composition.Blender, workspace.Trial, 0, piece, y, count);
        foreach (var item in on)
        {
            if (item.Effect is OutlineEffect) MixOutline(item, y, x, count, workspace);
            else if (TryRead(item, item.Inside, y, x, count, workspace)) Mix(item.Blender, workspace.Trial, 0, piece, y, count);
        }
    }

    /// <summary>Mixes effects with the layer's own colours, which are in the piece and come back in it.</summary>
    private void MixWithin(int y, int x, int count, Workspace workspace)
    {
        var (piece, mixed) = (workspace.Piece, workspace.Within);
        mixed.Left = x;
        Copy(piece, 0, mixed, count);
        mixed.Alpha.AsSpan(0, count).Fill(1f);
        foreach (var item in within)
        {
            if (!TryRead(item, item.Inside, y, x, count, workspace)) continue;
            item.Blender.Settle(piece.Alpha, x, y, count);
            piece.ClearTail(count);
            item.Blender.DrawOver(mixed, 0, piece, count);
        }

        Copy(mixed, 0, piece, count);
    }

    /// <summary>An outline's plane says how much of a whole pixel it fills, not of the layer's part of it.</summary>
    private void MixOutline(PlacedEffect item, int y, int x, int count, Workspace workspace)
    {
        if (item.Inside is null || !TryRead(item, item.Inside, y, x, count, workspace)) return;
        var alpha = workspace.Piece.Alpha;
        for (var i = 0; i < count; i++) alpha[i] = workspace.Shape[i] > 0 ? Math.Min(item.Effect.Opacity, alpha[i] / workspace.Shape[i]) : 0f;
        Mix(item.Blender, workspace.Trial, 0, workspace.Piece, y, count);
    }

    /// <summary>Adds what the trial piece changed, weighed, to the result.</summary>
    private void Add(PixelRow target, int at, PixelRow trial, float[] weights, PixelRow result, int count)
    {
        for (var channel = 0; channel < target.Colors.Length; channel++) Add(target.Colors[channel], at, trial.Colors[channel], weights, result.Colors[channel], count);
        Add(target.Alpha, at, trial.Alpha, weights, result.Alpha, count);
    }

    private void Add(float[] before, int at, float[] after, float[] weights, float[] result, int count)
    {
        for (var i = 0; i < count; i++) result[i] += (after[i] - before[at + i]) * weights[i] * composition.Opacity;
    }
}
