using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>A mode that mixes whole colours. In grey files all three channels are the grey, so that what has no luminosity of its own to give changes nothing.</summary>
internal sealed class ColorBlender<TFunction> : Blender
    where TFunction : struct, IColorFunction
{
    public override void DrawOver(PixelRow target, int at, PixelRow source, int count)
    {
        Mix(target, at, source, count, isInside: false);
        MixAlpha(target.Alpha, at, source.Alpha, count);
    }

    public override void DrawInside(PixelRow target, int at, PixelRow source, int count) => Mix(target, at, source, count, isInside: true);

    private static void Mix(PixelRow target, int at, PixelRow source, int count, bool isInside)
    {
        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var alpha = new Vector<float>(source.Alpha, i);
            var alphaBelow = new Vector<float>(target.Alpha, at + i);
            var color = Read(source, i);
            var mixed = default(TFunction).Blend(Straighten(Read(target, at + i), alphaBelow), color);
            for (var channel = 0; channel < target.Colors.Length; channel++)
            {
                var below = new Vector<float>(target.Colors[channel], at + i);
                Join(below, alphaBelow, Get(color, channel), Get(mixed, channel), alpha, isInside).CopyTo(target.Colors[channel], at + i);
            }
        }
    }

    private static RgbVectors Read(PixelRow row, int at)
    {
        var first = new Vector<float>(row.Colors[0], at);
        return row.Colors.Length == 1 ? new RgbVectors(first, first, first) : new RgbVectors(first, new Vector<float>(row.Colors[1], at), new Vector<float>(row.Colors[2], at));
    }

    private static Vector<float> Get(RgbVectors colors, int channel) => channel switch { 0 => colors.Red, 1 => colors.Green, _ => colors.Blue };

    private static RgbVectors Straighten(RgbVectors premultiplied, Vector<float> alpha) => new(
        Straighten(premultiplied.Red, alpha),
        Straighten(premultiplied.Green, alpha),
        Straighten(premultiplied.Blue, alpha));
}
