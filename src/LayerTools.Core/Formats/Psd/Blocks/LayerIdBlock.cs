using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>The layer's id: 4 bytes.</summary>
internal sealed class LayerIdBlock() : LayerBlock("lyid")
{
    public static int? Read(ReadOnlySpan<byte> data) => data.Length >= 4 ? BinaryPrimitives.ReadInt32BigEndian(data) : null;

    public override void Load(ReadOnlySpan<byte> data, Layer layer) => layer.Id = Read(data) ?? layer.Id;

    public override bool Says(ReadOnlySpan<byte> data, Layer layer) => Read(data) == layer.Id;

    public override bool IsMissed(Layer layer, PsdHabits habits) => layer.Id is not null;

    public override byte[] Store(ReadOnlySpan<byte> stored, Layer layer, PsdHabits habits)
    {
        var data = stored.Length >= 4 ? stored.ToArray() : new byte[4];
        if (layer.Id is { } id) BinaryPrimitives.WriteInt32BigEndian(data, id);
        return data;
    }
}
