using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Reads big-endian values from a file through nested sections: no read leaves the section it is in, and no length is believed before it was compared with what remains.</summary>
internal sealed class PsdInput : IDisposable
{
    private readonly FileStream stream;
    private readonly byte[] buffer = new byte[1 << 15];
    private long bufferStart;
    private int bufferCount;

    public PsdInput(string path)
    {
        // Looked at before opening: a pipe or a device says 0 too, and opening one may wait for ever.
        if (new FileInfo(path) is { Exists: true, Length: 0 })
        {
            throw new LayeredFileException(LayeredFileErrorKind.NotALayeredFile, path, "header", 0, "The file is empty.", "Name PSD or PSB files only.");
        }

        stream = FileAccessErrors.Wrap(path, () => new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, 1));
        Source = new SourceFile(path);
        Length = stream.Length;
        End = Length;
    }

    public SourceFile Source { get; }

    public long Length { get; }

    public long Position { get; private set; }

    /// <summary>Where the current section ends.</summary>
    public long End { get; private set; }

    public PsdSection Section { get; private set; } = "header";

    public long Remaining => End - Position;

    /// <summary>Enters a section of declared length; <see cref="Leave"/> steps to its end and back into the section around it.</summary>
    public (long End, PsdSection Section) Enter(long length, PsdSection section)
    {
        CheckLength(length, section);
        var outer = (End, Section);
        End = Position + length;
        Section = section;
        return outer;
    }

    /// <summary>Compares a declared length with what remains, before anything is read or allocated.</summary>
    public void CheckLength(long length, PsdSection section)
    {
        if (length < 0) throw Damaged($"The length of the {section}, {length} bytes, is negative.", section);
        if (length <= Remaining) return;
        if (End == Length) throw Truncated(section, length);
        var around = section == Section ? "part" : Section.ToString();
        throw Damaged($"The {section} says it has {length} bytes, but the {around} around it has only {Remaining} left.", section);
    }

    public void Leave((long End, PsdSection Section) outer)
    {
        Position = End;
        (End, Section) = outer;
    }

    /// <summary>Names the part that is read next, for errors.</summary>
    public void Name(PsdSection section) => Section = section;

    public byte ReadByte()
    {
        Span<byte> bytes = stackalloc byte[1];
        Read(bytes);
        return bytes[0];
    }

    public ushort ReadUInt16()
    {
        Span<byte> bytes = stackalloc byte[2];
        Read(bytes);
        return BinaryPrimitives.ReadUInt16BigEndian(bytes);
    }

    public short ReadInt16() => (short)ReadUInt16();

    public uint ReadUInt32()
    {
        Span<byte> bytes = stackalloc byte[4];
        Read(bytes);
        return BinaryPrimitives.ReadUInt32BigEndian(bytes);
    }

    public int ReadInt32() => (int)ReadUInt32();

    /// <summary>A length of 4 bytes, or of 8; beyond 2^63 − 1 it is damage.</summary>
    public long ReadLength(bool wide)
    {
        if (!wide) return ReadUInt32();
        Span<byte> bytes = stackalloc byte[8];
        Read(bytes);
        var length = BinaryPrimitives.ReadInt64BigEndian(bytes);
        return length >= 0 ? length : throw Damaged($"A length of {(ulong)length} bytes is impossible.");
    }

    public byte[] ReadBytes(long count)
    {
        Require(count);
        if (count > int.MaxValue) throw Damaged($"A part of {count} bytes is too large to be read at once.");
        if (count == 0) return [];
        var bytes = new byte[count];
        Read(bytes);
        return bytes;
    }

    /// <summary>Bytes as a source: small ones in memory, large ones by their place in the file.</summary>
    /// <param name="count">How many.</param>
    /// <param name="isUnderstood">Whether edits may have to read and change them, so that they are in memory unless they are absurdly large.</param>
    public ByteSource ReadSource(long count, bool isUnderstood = false)
    {
        const int LargestUnderstood = 1 << 24;
        const int LargestUnknown = 1 << 16;
        if (count <= (isUnderstood ? LargestUnderstood : LargestUnknown)) return count == 0 ? MemoryBytes.Empty : new MemoryBytes(ReadBytes(count));
        Require(count);
        var slice = new FileSlice(Source, Position, count);
        Position += count;
        return slice;
    }

    public void Skip(long count)
    {
        Require(count);
        Position += count;
    }

    /// <summary>Looks ahead without moving; false if the section ends before.</summary>
    public bool TryPeek(long ahead, Span<byte> bytes)
    {
        if (ahead + bytes.Length > Remaining) return false;
        var place = Position;
        Position += ahead;
        Read(bytes);
        Position = place;
        return true;
    }

    public void Read(Span<byte> bytes)
    {
        Require(bytes.Length);
        var inBuffer = Position - bufferStart;
        if (inBuffer < 0 || inBuffer + bytes.Length > bufferCount)
        {
            if (bytes.Length > buffer.Length)
            {
                stream.Position = Position;
                if (!StreamReading.TryFill(stream, bytes)) throw Truncated(Section, bytes.Length);
                Position += bytes.Length;
                return;
            }

            bufferStart = Position;
            bufferCount = (int)Math.Min(buffer.Length, Length - Position);
            stream.Position = Position;
            if (!StreamReading.TryFill(stream, buffer.AsSpan(0, bufferCount))) throw Truncated(Section, bufferCount);
            inBuffer = 0;
        }

        buffer.AsSpan((int)inBuffer, bytes.Length).CopyTo(bytes);
        Position += bytes.Length;
    }

    public void Require(long count)
    {
        if (count <= Remaining) return;
        throw End == Length ? Truncated(Section, count) : Damaged($"The {Section} ends after {Remaining} bytes, but {count} more are needed.");
    }

    public LayeredFileException Damaged(string problem, PsdSection? section = null) =>
        new(LayeredFileErrorKind.Damaged, Source.Path, (section ?? Section).ToString(), Position, problem, "The file is damaged; open it where it was made and save it again, or restore a copy.");

    public LayeredFileException LimitExceeded(string problem, string limit) =>
        new(LayeredFileErrorKind.LimitExceeded, Source.Path, Section.ToString(), Position, problem, $"If you trust the file, raise the limit: Get-LayerFile -Limit @{{ {limit} = ... }}.");

    /// <summary>Remembers the file's state, so that later reads can tell whether it changed.</summary>
    public void Remember(IReadOnlyList<(long Offset, long Length)> watched) => Source.Remember(stream, watched);

    public void Dispose() => stream.Dispose();

    private LayeredFileException Truncated(PsdSection section, long needed) =>
        new(LayeredFileErrorKind.Truncated, Source.Path, section.ToString(), Position, $"The file ends after {Length} bytes, but {needed} bytes are needed from here.", "The file was not written or copied completely; copy it again from where it was made.");
}
