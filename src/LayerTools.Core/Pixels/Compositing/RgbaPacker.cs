using System.Numerics;
using System.Runtime.InteropServices;
using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Compositing;

/// <summary>Turns drawn rows to RGBA of 8 bits, not premultiplied. Where nothing is seen all four samples are 0. Can be used from several threads.</summary>
internal sealed class RgbaPacker(LayerFile file, ColorConverter converter, int width)
{
    private readonly bool isPlain = file.ColorMode is ColorMode.Rgb or ColorMode.Grayscale && file.BitDepth < 32;

    /// <summary>Numbers that a row may touch: more than its pixels, since whole vectors are written.</summary>
    public int Stride => width + Vector<int>.Count;

    /// <summary>Packs a row, each pixel into a number whose lowest byte is R.</summary>
    public void Pack(PixelRow row, int[] target, int start)
    {
        if (isPlain) PackVectors(row, target, start);
        else Convert(row, MemoryMarshal.AsBytes(target.AsSpan(start, width)));
    }

    private void PackVectors(PixelRow row, int[] target, int start)
    {
        var (red, green, blue) = row.Colors.Length == 1 ? (row.Colors[0], row.Colors[0], row.Colors[0]) : (row.Colors[0], row.Colors[1], row.Colors[2]);
        for (var x = 0; x < width; x += Vector<float>.Count)
        {
            var alpha = new Vector<float>(row.Alpha, x);
            var opacity = ToByte(alpha);
            var packed = ToByte(new Vector<float>(red, x) / alpha)
                + (ToByte(new Vector<float>(green, x) / alpha) * (1 << 8))
                + (ToByte(new Vector<float>(blue, x) / alpha) * (1 << 16))
                + (opacity * (1 << 24));
            Vector.ConditionalSelect(Vector.GreaterThan(opacity, Vector<int>.Zero), packed, Vector<int>.Zero).CopyTo(target, start + x);
        }
    }

    private static Vector<int> ToByte(Vector<float> samples)
    {
        var clamped = Vector.Min(Vector.Max(samples, Vector<float>.Zero), Vector<float>.One);
        return Vector.ConvertToInt32((clamped * byte.MaxValue) + new Vector<float>(0.5f));
    }

    private void Convert(PixelRow row, Span<byte> target)
    {
        Span<float> color = stackalloc float[row.Colors.Length];
        for (var x = 0; x < width; x++)
        {
            var alpha = row.Alpha[x];
            var pixel = target.Slice(4 * x, 4);
            pixel[3] = (byte)((alpha > 0 ? Math.Min(alpha, 1f) * byte.MaxValue : 0f) + 0.5f);
            if (pixel[3] == 0)
            {
                pixel.Clear();
                continue;
            }

            for (var channel = 0; channel < color.Length; channel++) color[channel] = row.Colors[channel][x] / alpha;
            converter.Convert(color, pixel.Slice(0, 3));
        }
    }
}
