using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>What is locked: bit 0 transparency, bit 1 pixels, bit 2 place, bit 3 nesting, and the highest bit for all.</summary>
internal sealed class LockBlock() : LayerBlock("lspf")
{
    public override void Load(ReadOnlySpan<byte> data, Layer layer)
    {
        if (data.Length >= 4) layer.LockFlags = BinaryPrimitives.ReadUInt32BigEndian(data);
        layer.Locked |= layer.LockFlags != 0;
    }

    public override bool Says(ReadOnlySpan<byte> data, Layer layer) => data.Length < 4 || BinaryPrimitives.ReadUInt32BigEndian(data) == layer.LockFlags;

    public override bool IsMissed(Layer layer, PsdHabits habits) => layer.LockFlags != 0;

    public override byte[] Store(ReadOnlySpan<byte> stored, Layer layer, PsdHabits habits)
    {
        var data = stored.Length >= 4 ? stored.ToArray() : new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(data, layer.LockFlags);
        return data;
    }
}
