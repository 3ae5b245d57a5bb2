using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>A mode in which fill opacity works before the formula. Where there is nothing below to mix with, fill opacity is plain opacity.</summary>
internal sealed class FillBlender<TFunction>(float fill) : Blender
    where TFunction : struct, IFillFunction
{
    public override void DrawOver(PixelRow target, int at, PixelRow source, int count)
    {
        Mix(target, at, source, count, isInside: false);
        var filled = new Vector<float>(fill);
        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var below = new Vector<float>(target.Alpha, at + i);
            (below + (new Vector<float>(source.Alpha, i) * filled * (Vector<float>.One - below))).CopyTo(target.Alpha, at + i);
        }
    }

    public override void DrawInside(PixelRow target, int at, PixelRow source, int count) => Mix(target, at, source, count, isInside: true);

    private void Mix(PixelRow target, int at, PixelRow source, int count, bool isInside)
    {
        var filled = new Vector<float>(fill);
        for (var channel = 0; channel < target.Colors.Length; channel++)
        {
            var colors = target.Colors[channel];
            var sourceColors = source.Colors[channel];
            for (var i = 0; i < count; i += Vector<float>.Count)
            {
                var below = new Vector<float>(colors, at + i);
                var alphaBelow = new Vector<float>(target.Alpha, at + i);
                var color = new Vector<float>(sourceColors, i);
                var mixed = default(TFunction).Blend(Straighten(below, alphaBelow), color, filled);
                Join(below, alphaBelow, color * filled, mixed, new Vector<float>(source.Alpha, i), isInside).CopyTo(colors, at + i);
            }
        }
    }
}
