using LayerTools.Pixels;

namespace LayerTools.Model;

/// <summary>One channel of a layer as it is stored: packed samples that are unpacked only when somebody needs them.</summary>
internal sealed class Plane
{
    public Plane(PlaneRole role, int compressionWord, ByteSource data)
    {
        Role = role;
        CompressionWord = compressionWord;
        Data = data;
    }

    /// <summary>Marks a channel of length 0, which files may store instead of an empty one.</summary>
    public const int NoCompressionWord = -1;

    public PlaneRole Role { get; }

    /// <summary>The compression as stored, or <see cref="NoCompressionWord"/>. Checked only when the samples are wanted.</summary>
    public int CompressionWord { get; }

    /// <summary>The packed bytes after the compression word.</summary>
    public ByteSource Data { get; }

    /// <summary>Bytes in the file, compression word included.</summary>
    public long StoredLength => CompressionWord == NoCompressionWord ? 0 : Data.Length + 2;

    public Compression Compression => (Compression)CompressionWord;
}
