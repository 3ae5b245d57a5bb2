using System.Numerics;

namespace LayerTools.Pixels.Compositing;

/// <summary>A mode in which fill opacity works before the formula. Where there is nothing below to mix with, fill opacity is plain opacity.</summary>
internal sealed class FillBlender<TFunction>(float fill) : Blender
    where TFunction : struct, IFillFunction
{
    public override void DrawOver(PixelRow target, int at, PixelRow source, int count)
    {
        var filled = new Vector<float>(fill);
        for (var channel = 0; channel < target.Colors.Length; channel++)
        {
            var colors = target.Colors[channel];
            for (var i = 0; i < count; i += Vector<float>.Count)
            {
                var alpha = new Vector<float>(source.Alpha, i);
                var alphaBelow = new Vector<float>(target.Alpha, at + i);
                var below = new Vector<float>(colors, at + i);
                var color = new Vector<float>(source.Colors[channel], i);
                var mixed = default(TFunction).Blend(Straighten(below, alphaBelow), color, filled);
                var alone = color * filled * (Vector<float>.One - alphaBelow);
                ((below * (Vector<float>.One - alpha)) + (((mixed * alphaBelow) + alone) * alpha)).CopyTo(colors, at + i);
            }
        }

        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var below = new Vector<float>(target.Alpha, at + i);
            (below + (new Vector<float>(source.Alpha, i) * filled * (Vector<float>.One - below))).CopyTo(target.Alpha, at + i);
        }
    }

    public override void DrawInside(PixelRow target, int at, PixelRow source, int count)
    {
        var filled = new Vector<float>(fill);
        for (var channel = 0; channel < target.Colors.Length; channel++)
        {
            var colors = target.Colors[channel];
            for (var i = 0; i < count; i += Vector<float>.Count)
            {
                var alpha = new Vector<float>(source.Alpha, i);
                var alphaBelow = new Vector<float>(target.Alpha, at + i);
                var below = new Vector<float>(colors, at + i);
                var mixed = default(TFunction).Blend(Straighten(below, alphaBelow), new Vector<float>(source.Colors[channel], i), filled);
                ((below * (Vector<float>.One - alpha)) + (mixed * alphaBelow * alpha)).CopyTo(colors, at + i);
            }
        }
    }
}
