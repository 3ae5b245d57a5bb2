using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>One layer record in the exact form in which it is stored (PSD File Formats Specification, 'Layer records').</summary>
internal sealed record PsdRecord
{
    public Bounds Bounds { get; init; }

    /// <summary>Channels in stored order; their bytes follow after all records.</summary>
    public IReadOnlyList<Plane> Planes { get; init; } = [];

    public uint BlendSignature { get; init; } = PsdKey.Signature;

    public uint BlendKey { get; init; } = PsdKey.Parse("norm");

    public byte Opacity { get; init; } = 255;

    public byte Clipping { get; init; }

    public byte Flags { get; init; } = KnowsPixelFlag;

    public byte Filler { get; init; }

    public byte[] MaskData { get; init; } = [];

    public byte[] BlendingRanges { get; init; } = [];

    public byte[] LegacyName { get; init; } = [];

    public byte[] LegacyNamePadding { get; init; } = new byte[3];

    public IReadOnlyList<PsdBlock> Blocks { get; init; } = [];

    /// <summary>Bytes at the end that are no block.</summary>
    public ByteSource Tail { get; init; } = MemoryBytes.Empty;

    public const byte TransparencyLocked = 1;
    public const byte Hidden = 2;
    public const byte KnowsPixelFlag = 8;
    public const byte PixelsIrrelevant = 16;

    public PsdBlock? Find(uint key)
    {
        foreach (var block in Blocks)
        {
            if (block.Key == key) return block;
        }

        return null;
    }

    public bool Has(params string[] keys) => keys.Any(key => Find(PsdKey.Parse(key)) is not null);

    /// <summary>The data of a block that is small enough to be in memory; empty where there is none.</summary>
    public ReadOnlySpan<byte> GetData(string key) => Find(PsdKey.Parse(key))?.Data is MemoryBytes memory ? memory.Bytes : default;

    public long MeasureExtra(FileFormat format) =>
        4 + MaskData.Length + 4 + BlendingRanges.Length + 1 + LegacyName.Length + LegacyNamePadding.Length + Blocks.Sum(block => block.GetLength(format)) + Tail.Length;

    public void Write(PsdOutput output, FileFormat format)
    {
        PsdMaskData.WriteBounds(output, Bounds);
        output.WriteUInt16((ushort)Planes.Count);
        foreach (var plane in Planes)
        {
            output.WriteInt16((short)plane.Role);
            output.WriteLength(plane.StoredLength, format == FileFormat.Psb);
        }

        output.WriteUInt32(BlendSignature);
        output.WriteUInt32(BlendKey);
        output.WriteByte(Opacity);
        output.WriteByte(Clipping);
        output.WriteByte(Flags);
        output.WriteByte(Filler);
        output.WriteUInt32(checked((uint)MeasureExtra(format)));
        output.WriteUInt32((uint)MaskData.Length);
        output.Write(MaskData);
        output.WriteUInt32((uint)BlendingRanges.Length);
        output.Write(BlendingRanges);
        output.WriteByte((byte)LegacyName.Length);
        output.Write(LegacyName);
        output.Write(LegacyNamePadding);
        foreach (var block in Blocks)
        {
            block.WriteHeader(output, format, block.Data.Length);
            output.Write(block.Data);
            output.Write(block.Padding);
        }

        output.Write(Tail);
    }
}
