using System.Buffers;
using System.Runtime.InteropServices;

namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>Keeps a whole picture as it is drawn.</summary>
internal sealed class RasterSink(RgbaPacker packer, int width, int height) : IRowSink
{
    public Raster Raster { get; } = new(width, height);

    public void BeginBand(int top, int count)
    {
    }

    public void Accept(int row, PixelRow pixels)
    {
        var packed = ArrayPool<int>.Shared.Rent(packer.Stride);
        packer.Pack(pixels, packed, 0);
        MemoryMarshal.AsBytes(packed.AsSpan(0, width)).CopyTo(Raster.Row(row));
        ArrayPool<int>.Shared.Return(packed);
    }

    public void EndBand()
    {
    }
}
