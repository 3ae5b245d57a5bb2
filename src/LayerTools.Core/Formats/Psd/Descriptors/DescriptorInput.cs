using System.Buffers.Binary;
using System.Text;
using LayerTools.Errors;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Reads the parts of descriptors from bytes in memory; no length is believed before it was compared with what remains.</summary>
internal sealed class DescriptorInput(byte[] bytes, int position, string section)
{
    public int Position { get; private set; } = position;

    public int Remaining => bytes.Length - Position;

    public byte ReadByte() => Take(1)[0];

    public short ReadInt16() => BinaryPrimitives.ReadInt16BigEndian(Take(2));

    public int ReadInt32() => BinaryPrimitives.ReadInt32BigEndian(Take(4));

    public long ReadInt64() => BinaryPrimitives.ReadInt64BigEndian(Take(8));

    public double ReadDouble() => BitConverter.Int64BitsToDouble(ReadInt64());

    public string ReadCodeText() => ReadAscii(4);

    /// <summary>A key: a length and as many bytes; length 0 stands for a code of four.</summary>
    public string ReadKey()
    {
        var length = ReadInt32();
        return ReadAscii(length == 0 ? 4 : length);
    }

    /// <summary>A count of UTF-16BE units, then the units; writers count a NUL at the end.</summary>
    public string ReadText()
    {
        var count = ReadCount(2);
        var units = Take(2 * count);
        var builder = new StringBuilder(count);
        for (var i = 0; i < count; i++) builder.Append((char)BinaryPrimitives.ReadUInt16BigEndian(units.Slice(2 * i)));
        return builder.ToString().TrimEnd('\0');
    }

    public byte[] ReadBytes() => Take(ReadInt32()).ToArray();

    public void Skip(int count) => Take(count);

    /// <summary>A length byte, then as many bytes.</summary>
    public string ReadPascal() => ReadAscii(ReadByte());

    /// <summary>A count of things that take at least so many bytes each.</summary>
    public int ReadCount(int leastBytes)
    {
        var count = ReadInt32();
        if (count < 0 || count > Remaining / leastBytes) throw Damaged($"It says it has {(uint)count} items, but only {Remaining} bytes are left.");
        return count;
    }

    public byte[] CopyRest() => bytes.AsSpan(Position).ToArray();

    public LayeredFileException Damaged(string problem) =>
        new(LayeredFileErrorKind.Damaged, null, section, Position, problem, "The file is damaged; open it where it was made and save it again, or restore a copy.");

    public LayeredFileException TooDeep(int depth) =>
        new(LayeredFileErrorKind.LimitExceeded, null, section, Position, $"Its parts are nested deeper than {depth}.", "No sound file needs that; restore a copy.");

    private string ReadAscii(int length)
    {
        var codes = Take(length);
        var builder = new StringBuilder(length);
        foreach (var code in codes) builder.Append((char)code);
        return builder.ToString();
    }

    private ReadOnlySpan<byte> Take(int count)
    {
        if (count < 0 || count > Remaining) throw Damaged($"It ends after {Remaining} bytes, but {(uint)count} more are needed.");
        Position += count;
        return bytes.AsSpan(Position - count, count);
    }
}
