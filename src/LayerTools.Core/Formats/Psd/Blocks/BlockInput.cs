using System.Buffers.Binary;
using LayerTools.Errors;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>Reads the big-endian numbers of one block from the front; a block that ends early is damaged.</summary>
internal sealed class BlockInput(byte[] data)
{
    public int Position { get; private set; }

    public int Remaining => data.Length - Position;

    public byte ReadByte() => Take(1)[0];

    public short ReadInt16() => BinaryPrimitives.ReadInt16BigEndian(Take(2));

    public ushort ReadUInt16() => BinaryPrimitives.ReadUInt16BigEndian(Take(2));

    public int ReadInt32() => BinaryPrimitives.ReadInt32BigEndian(Take(4));

    public uint ReadUInt32() => BinaryPrimitives.ReadUInt32BigEndian(Take(4));

    /// <summary>A finite number of 4 bytes.</summary>
    public float ReadSingle()
    {
        const int Exponent = 0x7F800000;
        var bits = ReadInt32();
        if ((bits & Exponent) == Exponent) throw Damaged("A number is not finite.");
#if NET8_0_OR_GREATER
        return BitConverter.Int32BitsToSingle(bits);
#else
        return System.Runtime.CompilerServices.Unsafe.As<int, float>(ref bits);
#endif
    }

    public byte[] ReadBytes(int count) => Take(count).ToArray();

    public void Skip(int count) => Take(count);

    public LayeredFileException Damaged(string problem) =>
        new(LayeredFileErrorKind.Damaged, null, "adjustment", Position, problem, "Open the file where it was made and save it again, or restore a copy.");

    private ReadOnlySpan<byte> Take(int count)
    {
        if (count < 0 || count > Remaining) throw Damaged(FormattableString.Invariant($"It ends after {Remaining} bytes, but {count} more are needed."));
        Position += count;
        return data.AsSpan(Position - count, count);
    }
}
