using System.Buffers.Binary;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Formats.Psd.Patterns;

/// <summary>One plane of a pattern as it is stored.</summary>
internal sealed class PatternPlane
{
    private readonly byte[] data;
    private readonly int depth;
    private readonly int compression;

    private PatternPlane(int width, int height, int depth, int compression, byte[] data)
    {
        Width = width;
        Height = height;
        this.depth = depth;
        this.compression = compression;
        this.data = data;
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>written 4, length 4, depth 4, top 4, left 4, bottom 4, right 4, depth 2, compression 1, samples; null for a plane that was not written.</summary>
    public static PatternPlane? TryRead(DescriptorInput input)
    {
        if (input.ReadInt32() == 0) return null;
        var bytes = input.ReadBytes();
        if (bytes.Length == 0) return null;
        var plane = new DescriptorInput(bytes, 0, "pattern");
        plane.Skip(4);
        var (top, left, bottom, right) = (plane.ReadInt32(), plane.ReadInt32(), plane.ReadInt32(), plane.ReadInt32());
        var depth = (int)plane.ReadInt16();
        var compression = plane.ReadByte();
        if (right <= left || bottom <= top || (long)right - left > int.MaxValue || (long)bottom - top > int.MaxValue) throw plane.Damaged("A plane has no size.");
        return new PatternPlane(right - left, bottom - top, depth, compression, plane.CopyRest());
    }

    /// <summary>Samples 0 to 1.</summary>
    /// <param name="input">Where the plane was read, for errors.</param>
    public float[] Decode(DescriptorInput input)
    {
        if (depth is not (8 or 16 or 32)) throw input.Damaged($"A plane has {depth} bit a sample.");
        var rowBytes = (long)Width * (depth / 8);
        // PackBits makes 128 of 2 bytes at most, so that a size which the bytes cannot fill is refused before anything is allocated.
        if (rowBytes * Height > (compression == 0 ? data.Length : 64L * data.Length)) throw input.Damaged($"A plane of {Width} x {Height} has only {data.Length} bytes.");
        var samples = new float[Width * Height];
        var row = new byte[rowBytes];
        var position = 2 * Height;
        for (var y = 0; y < Height; y++)
        {
            if (compression == 0)
            {
                Samples.Decode(data.AsSpan((int)(y * rowBytes)), depth, samples.AsSpan(y * Width, Width));
                continue;
            }

            if (compression != 1 || 2 * Height > data.Length) throw input.Damaged("A plane is packed in an unknown way.");
            var length = BinaryPrimitives.ReadUInt16BigEndian(data.AsSpan(2 * y));
            if (length > data.Length - position) throw input.Damaged("A packed row reaches past its plane.");
            if (PackBits.TryDecode(data.AsSpan(position, length), row) is { } problem) throw input.Damaged(problem);
            position += length;
            Samples.Decode(row, depth, samples.AsSpan(y * Width, Width));
        }

        return samples;
    }
}
