using System.Runtime.InteropServices;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Sinks;

namespace LayerTools.Images;

/// <summary>Fills a picture while it is drawn.</summary>
internal sealed class ImageSink(PngPicture png, RgbaPacker packer, int width) : IRowSink
{
    private int[] packed = [];
    private int bandTop;
    private int bandCount;

    public void BeginBand(int top, int count)
    {
        (bandTop, bandCount) = (top, count);
        if (packed.Length < count * packer.Stride) packed = new int[checked(count * packer.Stride)];
    }

    public void Accept(int row, PixelRow pixels) => packer.Pack(pixels, packed, (row - bandTop) * packer.Stride);

    public void EndBand()
    {
        for (var row = 0; row < bandCount; row++) png.WriteRow(MemoryMarshal.AsBytes(packed.AsSpan(row * packer.Stride, width)));
    }
}
