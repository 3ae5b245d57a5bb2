using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Formats.Psd;

/// <summary>The merged picture as it is stored, channel by channel (PSD File Formats Specification, 'Image data section').</summary>
internal sealed class StoredPicture
{
    private const int WordLength = 2;
    private readonly PsdFileDetail detail;
    private readonly OpenedSources opened;
    private readonly string path;
    private readonly int[] packedLengths;

    /// <exception cref="LayeredFileException">The picture is packed in a way that cannot be read here.</exception>
    public StoredPicture(PsdFileDetail detail, OpenedSources opened, string path)
    {
        this.detail = detail;
        this.opened = opened;
        this.path = path;
        RowBytes = PlaneRows.GetRowBytes(detail.Header.Width, detail.Header.Depth);
        Compression = ReadCompression(detail, opened);
        packedLengths = Compression switch
        {
            Compression.Raw => [],
            Compression.PackBits => ReadPackedLengths(),
            _ => throw new LayeredFileException(LayeredFileErrorKind.NotSupported, path, "merged picture", -1, $"The merged picture is packed in way {(int)Compression}, which cannot be read.", "Save the file anew where it was made."),
        };
    }

    public Compression Compression { get; }

    public int RowBytes { get; }

    private int Height => detail.Header.Height;

    /// <summary>How the picture is packed; it need not be a way that can be read.</summary>
    public static Compression ReadCompression(PsdFileDetail detail, OpenedSources opened)
    {
        Span<byte> word = stackalloc byte[WordLength];
        detail.MergedPicture.Read(0, word, opened);
        return (Compression)BinaryPrimitives.ReadUInt16BigEndian(word);
    }

    /// <summary>Opens a channel whose rows are then read from the top.</summary>
    public Channel OpenChannel(int index)
    {
        if (Compression == Compression.Raw) return new Channel(this, index * Height, WordLength + (long)index * Height * RowBytes);
        var start = WordLength + (long)packedLengths.Length * LengthSize;
        for (var i = 0; i < index * Height; i++) start += packedLengths[i];
        return new Channel(this, index * Height, start);
    }

    private int LengthSize => detail.Header.IsPsb ? 4 : 2;

    private int[] ReadPackedLengths()
    {
        var lengths = new int[detail.Header.Channels * Height];
        var bytes = new byte[lengths.Length * LengthSize];
        detail.MergedPicture.Read(WordLength, bytes, opened);
        for (var i = 0; i < lengths.Length; i++)
        {
            var length = LengthSize == 4 ? BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(4 * i)) : BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(2 * i));
            // A row of literals and no-ops can be longer than its samples, but not without end.
            if (length > 2L * RowBytes + 2) throw Damaged($"Row {i % Height} of channel {i / Height} claims {length} packed bytes for {RowBytes}.");
            lengths[i] = (int)length;
        }

        return lengths;
    }

    private LayeredFileException Damaged(string problem) => new(LayeredFileErrorKind.Damaged, path, "merged picture", -1, problem, "Save the file anew where it was made.");

    /// <summary>The rows of one channel.</summary>
    internal sealed class Channel(StoredPicture picture, int firstRow, long position)
    {
        private byte[] packed = [];
        private int row;
        private long position = position;

        public void ReadRow(Span<byte> samples)
        {
            if (picture.Compression == Compression.Raw)
            {
                picture.detail.MergedPicture.Read(position, samples, picture.opened);
                position += picture.RowBytes;
                return;
            }

            var length = picture.packedLengths[firstRow + row++];
            if (packed.Length < length) packed = new byte[length];
            picture.detail.MergedPicture.Read(position, packed.AsSpan(0, length), picture.opened);
            position += length;
            if (PackBits.TryDecode(packed.AsSpan(0, length), samples) is { } problem) throw picture.Damaged(problem);
        }
    }
}
