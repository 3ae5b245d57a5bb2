using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>The mode in which the backdrop's colour does not matter: B(cb, cs) = cs.</summary>
internal sealed class NormalBlender : Blender
{
    public override void DrawOver(PixelRow target, int at, PixelRow source, int count)
    {
        for (var channel = 0; channel < target.Colors.Length; channel++) Mix(target.Colors[channel], at, source.Colors[channel], source.Alpha, count);
        MixAlpha(target.Alpha, at, source.Alpha, count);
    }

    public override void DrawInside(PixelRow target, int at, PixelRow source, int count)
    {
        for (var channel = 0; channel < target.Colors.Length; channel++)
        {
            var colors = target.Colors[channel];
            var sourceColors = source.Colors[channel];
            for (var i = 0; i < count; i += Vector<float>.Count)
            {
                var alpha = new Vector<float>(source.Alpha, i);
                var below = new Vector<float>(colors, at + i);
                var inside = new Vector<float>(target.Alpha, at + i) * new Vector<float>(sourceColors, i);
                ((below * (Vector<float>.One - alpha)) + (inside * alpha)).CopyTo(colors, at + i);
            }
        }
    }

    private static void Mix(float[] target, int at, float[] source, float[] sourceAlpha, int count)
    {
        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var alpha = new Vector<float>(sourceAlpha, i);
            var below = new Vector<float>(target, at + i);
            ((below * (Vector<float>.One - alpha)) + (new Vector<float>(source, i) * alpha)).CopyTo(target, at + i);
        }
    }
}
