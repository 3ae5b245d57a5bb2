using System.Buffers;
using System.Runtime.InteropServices;

namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>Turns drawn rows into RGB and alpha of 8 bits, not premultiplied, and hands them on in bands. What is fully transparent has no colour.</summary>
internal sealed class StraightSink(RgbaPacker packer, int width, int maxRows, Action<MergedBand> consume) : IRowSink
{
    /// <summary>Red, green, blue, alpha.</summary>
    public const int ChannelCount = 4;

    private readonly MergedBand band = new(ChannelCount, width, maxRows);

    public void BeginBand(int top, int count)
    {
        band.Top = top;
        band.RowCount = count;
    }

    public void Accept(int row, PixelRow pixels)
    {
        var packed = ArrayPool<int>.Shared.Rent(packer.Stride);
        packer.Pack(pixels, packed, 0);
        var samples = MemoryMarshal.AsBytes(packed.AsSpan(0, width));
        for (var channel = 0; channel < ChannelCount; channel++)
        {
            var target = band.GetRow(channel, row);
            for (var x = 0; x < width; x++) target[x] = samples[(ChannelCount * x) + channel];
        }

        ArrayPool<int>.Shared.Return(packed);
    }

    public void EndBand() => consume(band);
}
