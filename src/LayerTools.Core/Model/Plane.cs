using System.Buffers.Binary;

namespace LayerTools.Model;

/// <summary>One channel of a layer as it is stored: packed samples that are unpacked only when somebody needs them.</summary>
internal sealed class Plane
{
    /// <summary>Marks a channel of length 0, which files may store instead of an empty one.</summary>
    public const int NoCompressionWord = -1;

    private const int WordLength = 2;

    /// <summary>A channel whose packing is known.</summary>
    public Plane(PlaneRole role, int compressionWord, ByteSource data)
    {
        Role = role;
        CompressionWord = compressionWord;
        Data = data;
    }

    /// <summary>A channel in a file, of which nothing was read yet.</summary>
    /// <param name="role">What the channel is for.</param>
    /// <param name="stored">Its bytes, from the compression word on.</param>
    public Plane(PlaneRole role, FileSlice stored)
    {
        Role = role;
        Stored = stored;
        Data = stored.Length == WordLength ? MemoryBytes.Empty : new FileSlice(stored.File, stored.Offset + WordLength, stored.Length - WordLength);
    }

    public PlaneRole Role { get; }

    /// <summary>The place in a file where the channel stands with its compression word; null for a new one.</summary>
    public FileSlice? Stored { get; }

    /// <summary>The packed bytes after the compression word.</summary>
    public ByteSource Data { get; }

    /// <summary>How the samples are packed, one of the numbers of <c>Compression</c> unless the file is odd; null where that stands in a file and was not read yet.</summary>
    public int? CompressionWord { get; }

    /// <summary>Whether there is a compression word at all.</summary>
    public bool HasCompressionWord => CompressionWord != NoCompressionWord;

    /// <summary>Bytes in the file, compression word included.</summary>
    public long StoredLength => HasCompressionWord ? Data.Length + WordLength : 0;

    /// <summary>How the samples are packed, read from the file where need be; <see cref="NoCompressionWord"/> where nothing is stored.</summary>
    public int ReadCompressionWord(OpenedSources opened)
    {
        if (CompressionWord is { } known) return known;
        Span<byte> word = stackalloc byte[WordLength];
        Stored!.Read(0, word, opened);
        return BinaryPrimitives.ReadUInt16BigEndian(word);
    }
}
