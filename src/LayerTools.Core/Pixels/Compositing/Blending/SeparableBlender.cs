using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>A mode that mixes each colour channel alone. One class per function, so that the function is inlined into the loop.</summary>
internal sealed class SeparableBlender<TFunction> : Blender
    where TFunction : struct, IBlendFunction
{
    public override void DrawOver(PixelRow target, int at, PixelRow source, int count)
    {
        Mix(target, at, source, count, isInside: false);
        MixAlpha(target.Alpha, at, source.Alpha, count);
    }

    public override void DrawInside(PixelRow target, int at, PixelRow source, int count) => Mix(target, at, source, count, isInside: true);

    private static void Mix(PixelRow target, int at, PixelRow source, int count, bool isInside)
    {
        for (var channel = 0; channel < target.Colors.Length; channel++)
        {
            var colors = target.Colors[channel];
            var sourceColors = source.Colors[channel];
            for (var i = 0; i < count; i += Vector<float>.Count)
            {
                var below = new Vector<float>(colors, at + i);
                var alphaBelow = new Vector<float>(target.Alpha, at + i);
                var color = new Vector<float>(sourceColors, i);
                var mixed = default(TFunction).Blend(Straighten(below, alphaBelow), color);
                Join(below, alphaBelow, color, mixed, new Vector<float>(source.Alpha, i), isInside).CopyTo(colors, at + i);
            }
        }
    }
}
