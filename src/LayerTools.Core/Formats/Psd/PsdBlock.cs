using LayerTools.Formats.Psd.Blocks;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>One block of additional data of a layer or of the file, kept as it is (PSD File Formats Specification, 'Additional Layer Information').</summary>
internal sealed record PsdBlock(uint Signature, uint Key, ByteSource Data, byte[] Padding)
{
    /// <summary>Signature, key and a length of 4 bytes.</summary>
    private const int ShortestHeader = 12;

    public PsdBlock(string key, byte[] data)
        : this(PsdKey.Signature, PsdKey.Parse(key), new MemoryBytes(data), [])
    {
    }

    /// <summary>The same block with other data.</summary>
    /// <param name="data">The data.</param>
    /// <param name="padsToFour">Whether the file fills up blocks to a multiple of 4 outside their length.</param>
    public PsdBlock With(byte[] data, bool padsToFour) => this with { Data = new MemoryBytes(data), Padding = new byte[padsToFour ? (4 - (data.Length & 3)) & 3 : 0] };

    public long GetLength(FileFormat format) => (PsdKey.HasWideLength(Signature, Key, format) ? 16 : 12) + Data.Length + Padding.Length;

    /// <summary>Reads blocks to the end of the section, or up to bytes that are none.</summary>
    public static List<PsdBlock> ReadAll(PsdInput input, FileFormat format)
    {
        var blocks = new List<PsdBlock>();
        while (IsNext(input) && TryReadHeader(input, format) is { } header)
        {
            var data = input.ReadSource(header.Length, VectorMaskBlock.IsKey(header.Key) || LayerBlocks.Find(header.Key) is not null);
            blocks.Add(new PsdBlock(header.Signature, header.Key, data, ReadPadding(input, header.Length)));
        }

        return blocks;
    }

    public static bool IsNext(PsdInput input) => IsSignature(input, 0);

    public static (uint Signature, uint Key, long Length)? TryReadHeader(PsdInput input, FileFormat format)
    {
        if (input.Remaining < ShortestHeader) return null;
        var signature = input.ReadUInt32();
        var key = input.ReadUInt32();
        var length = input.ReadLength(PsdKey.HasWideLength(signature, key, format));
        input.CheckLength(length, new PsdSection("block", Key: key));
        return (signature, key, length);
    }

    /// <summary>Bytes between this block and the next signature; writers pad to 1, 2 or 4, and what is found is kept.</summary>
    public static byte[] ReadPadding(PsdInput input, long length)
    {
        var toNextFour = (int)((4 - (length & 3)) & 3);
        for (var count = 0; count <= toNextFour; count++)
        {
            if (IsSignature(input, count) || input.Remaining == count) return input.ReadBytes(count);
        }

        return [];
    }

    public void WriteHeader(PsdOutput output, FileFormat format, long length)
    {
        output.WriteUInt32(Signature);
        output.WriteUInt32(Key);
        output.WriteLength(length, PsdKey.HasWideLength(Signature, Key, format));
    }

    private static bool IsSignature(PsdInput input, int ahead)
    {
        Span<byte> bytes = stackalloc byte[4];
        if (!input.TryPeek(ahead, bytes)) return false;
        var signature = System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(bytes);
        return signature == PsdKey.Signature || signature == PsdKey.WideSignature;
    }
}
