using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>How a piece of picture joins what lies below it.</summary>
/// <param name="Blender">Its blend mode.</param>
/// <param name="Opacity">0 to 1.</param>
/// <param name="Mask">Its masks, or null.</param>
/// <param name="Inside">Whether it may only change colours, because it is clipped to what lies below.</param>
/// <param name="Limits">Channels and brightness it is limited to, or null.</param>
internal sealed record Composition(Blender Blender, float Opacity, ICoverage? Mask, bool Inside, BlendLimits? Limits = null)
{
    /// <summary>Whether opaque pixels simply replace what lies below.</summary>
    public bool Replaces { get; } = Blender is NormalBlender && Opacity >= 1f && Mask is null && !Inside && Limits is null;

    /// <summary>Joins the first <paramref name="count"/> pixels of a piece that starts at <see cref="PixelRow.Left"/>; the piece's alpha is used up.</summary>
    public void Draw(PixelRow target, PixelRow piece, int y, int count, Workspace workspace)
    {
        Weaken(piece.Alpha, piece.Left, y, count, workspace);
        var at = piece.Left - target.Left;
        Limits?.Apply(target, at, piece, count);
        Blender.Settle(piece.Alpha, piece.Left, y, count);
        piece.ClearTail(count);
        if (Limits is { HasExcluded: true })
        {
            target.CopyTo(at, workspace.Before, count);
            Mix(target, at, piece, count);
            Limits.Restore(target, at, workspace.Before, count);
            return;
        }

        Mix(target, at, piece, count);
    }

    /// <summary>Multiplies coverage by mask and opacity.</summary>
    public void Weaken(float[] alpha, int x, int y, int count, Workspace workspace)
    {
        Mask?.Apply(alpha, x, y, count, workspace);
        if (Opacity >= 1f) return;
        for (var i = 0; i < count; i++) alpha[i] *= Opacity;
    }

    private void Mix(PixelRow target, int at, PixelRow piece, int count)
    {
        if (Inside) Blender.DrawInside(target, at, piece, count);
        else Blender.DrawOver(target, at, piece, count);
    }
}
