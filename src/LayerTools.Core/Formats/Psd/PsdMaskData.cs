using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>A layer's mask without its samples (PSD File Formats Specification, 'Layer mask / adjustment layer data').</summary>
internal static class PsdMaskData
{
    // rectangle 16, default colour 1, flags 1; then, only where channel -3 exists: flags 1, default colour 1, rectangle 16;
    // then, with flag 16: a byte that says which follow: user density 1, user feather 8, vector density 1, vector feather 8.
    private const int PlainLength = 18;
    private const byte ParametersFollow = 16;

    /// <summary>Reads a mask.</summary>
    /// <param name="data">The stored bytes.</param>
    /// <param name="hasPainted">Whether the layer has channel -3.</param>
    /// <param name="mask">The mask.</param>
    /// <returns>How many bytes the mask takes; the rest is filling that is kept. 0 where there is no mask.</returns>
    public static int Load(ReadOnlySpan<byte> data, bool hasPainted, out LayerMask? mask)
    {
        mask = null;
        if (data.Length < PlainLength) return 0;
        mask = new LayerMask { Bounds = ReadBounds(data), DefaultColor = data[16], Flags = data[17] };
        var position = PlainLength;
        if (hasPainted && data.Length >= position + PlainLength)
        {
            mask.PaintedFlags = data[position];
            mask.PaintedDefaultColor = data[position + 1];
            mask.PaintedBounds = ReadBounds(data.Slice(position + 2));
            position += PlainLength;
        }

        if ((mask.Flags & ParametersFollow) != 0 && position < data.Length) position = LoadParameters(data, position, mask);
        return position;
    }

    public static void Store(LayerMask mask, PsdOutput output)
    {
        WriteBounds(output, mask.Bounds);
        output.WriteByte(mask.DefaultColor);
        output.WriteByte(mask.Flags);
        if (mask.PaintedBounds is { } painted)
        {
            output.WriteByte(mask.PaintedFlags);
            output.WriteByte(mask.PaintedDefaultColor);
            WriteBounds(output, painted);
        }

        if (!mask.HasParameters) return;
        output.WriteByte((byte)((mask.UserDensity is null ? 0 : 1) | (mask.UserFeather is null ? 0 : 2) | (mask.VectorDensity is null ? 0 : 4) | (mask.VectorFeather is null ? 0 : 8)));
        if (mask.UserDensity is { } userDensity) output.WriteByte(userDensity);
        if (mask.UserFeather is { } userFeather) output.WriteInt64(BitConverter.DoubleToInt64Bits(userFeather));
        if (mask.VectorDensity is { } vectorDensity) output.WriteByte(vectorDensity);
        if (mask.VectorFeather is { } vectorFeather) output.WriteInt64(BitConverter.DoubleToInt64Bits(vectorFeather));
    }

    public static Bounds ReadBounds(ReadOnlySpan<byte> data) => new(
        BinaryPrimitives.ReadInt32BigEndian(data.Slice(4)),
        BinaryPrimitives.ReadInt32BigEndian(data),
        BinaryPrimitives.ReadInt32BigEndian(data.Slice(12)),
        BinaryPrimitives.ReadInt32BigEndian(data.Slice(8)));

    public static void WriteBounds(PsdOutput output, Bounds bounds)
    {
        output.WriteInt32(bounds.Top);
        output.WriteInt32(bounds.Left);
        output.WriteInt32(bounds.Bottom);
        output.WriteInt32(bounds.Right);
    }

    /// <summary>Reads the parameters, or leaves all of them to the filling where they do not fit or use bits that are unknown.</summary>
    private static int LoadParameters(ReadOnlySpan<byte> data, int start, LayerMask mask)
    {
        var which = data[start];
        var length = 1 + ((which & 1) != 0 ? 1 : 0) + ((which & 2) != 0 ? 8 : 0) + ((which & 4) != 0 ? 1 : 0) + ((which & 8) != 0 ? 8 : 0);
        if (which > 15 || start + length > data.Length) return start;
        var position = start + 1;
        if ((which & 1) != 0) mask.UserDensity = data[position++];
        if ((which & 2) != 0) mask.UserFeather = ReadDouble(data, ref position);
        if ((which & 4) != 0) mask.VectorDensity = data[position++];
        if ((which & 8) != 0) mask.VectorFeather = ReadDouble(data, ref position);
        mask.HasParameters = true;
        return position;
    }

    private static double ReadDouble(ReadOnlySpan<byte> data, ref int position)
    {
        var value = BitConverter.Int64BitsToDouble(BinaryPrimitives.ReadInt64BigEndian(data.Slice(position)));
        position += 8;
        return value;
    }
}
