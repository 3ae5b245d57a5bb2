using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>The colour mark: a 16-bit number and 6 zero bytes.</summary>
internal sealed class MarkBlock() : LayerBlock("lclr")
{
    private const int Length = 8;

    public override void Load(ReadOnlySpan<byte> data, Layer layer)
    {
        if (data.Length >= 2) layer.Mark = (Mark)BinaryPrimitives.ReadUInt16BigEndian(data);
    }

    public override bool Says(ReadOnlySpan<byte> data, Layer layer) =>
        (data.Length >= 2 ? (Mark)BinaryPrimitives.ReadUInt16BigEndian(data) : Mark.None) == layer.Mark;

    public override bool IsMissed(Layer layer, PsdHabits habits) => layer.Mark != Mark.None;

    public override byte[] Store(ReadOnlySpan<byte> stored, Layer layer, PsdHabits habits)
    {
        var data = stored.Length >= 2 ? stored.ToArray() : new byte[Length];
        BinaryPrimitives.WriteUInt16BigEndian(data, (ushort)layer.Mark);
        return data;
    }
}
