using System.Numerics;
using System.Runtime.InteropServices;
using LayerTools.Model;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Png;

namespace LayerTools.Images;

/// <summary>Turns drawn rows to RGBA of 8 bits and writes them as PNG. Where nothing is seen all four samples are 0.</summary>
internal sealed class ImageSink(PngWriter png, LayerFile file, ColorConverter converter, int width) : IRowSink
{
    private readonly bool isPlain = file.ColorMode is ColorMode.Rgb or ColorMode.Grayscale && file.BitDepth < 32;
    private readonly int stride = width + Vector<int>.Count;
    private int[] pixels = [];
    private int bandTop;
    private int bandCount;

    public void BeginBand(int top, int count)
    {
        (bandTop, bandCount) = (top, count);
        if (pixels.Length < count * stride) pixels = new int[checked(count * stride)];
    }

    public void Accept(int row, PixelRow pixels)
    {
        var start = (row - bandTop) * stride;
        if (isPlain) Pack(pixels, start);
        else Convert(pixels, MemoryMarshal.AsBytes(this.pixels.AsSpan(start, width)));
    }

    public void EndBand()
    {
        for (var row = 0; row < bandCount; row++) png.WriteRow(MemoryMarshal.AsBytes(pixels.AsSpan(row * stride, width)));
    }

    /// <summary>Packs the four samples of each pixel into a number, R in its lowest byte.</summary>
    private void Pack(PixelRow row, int start)
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
            Vector.ConditionalSelect(Vector.GreaterThan(opacity, Vector<int>.Zero), packed, Vector<int>.Zero).CopyTo(pixels, start + x);
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
