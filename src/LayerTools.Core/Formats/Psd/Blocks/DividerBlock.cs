using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>What a record is in the nesting of groups: type 4, then perhaps signature and blend mode 8, then perhaps a subtype 4.</summary>
internal sealed class DividerBlock(string key) : LayerBlock(key)
{
    public const int OpenGroup = 1;
    public const int ClosedGroup = 2;
    public const int GroupEnd = 3;
    private const int BlendKeyOffset = 8;
    private const int LengthWithBlendKey = 12;

    public static int ReadType(ReadOnlySpan<byte> data) => data.Length >= 4 ? BinaryPrimitives.ReadInt32BigEndian(data) : 0;

    public static uint? ReadBlendKey(ReadOnlySpan<byte> data) => data.Length >= LengthWithBlendKey ? BinaryPrimitives.ReadUInt32BigEndian(data.Slice(BlendKeyOffset)) : null;

    public static byte[] Write(int type, uint? blendKey)
    {
        var data = new byte[blendKey is null ? 4 : LengthWithBlendKey];
        BinaryPrimitives.WriteInt32BigEndian(data, type);
        if (blendKey is { } key)
        {
            BinaryPrimitives.WriteUInt32BigEndian(data.AsSpan(4), PsdKey.Signature);
            BinaryPrimitives.WriteUInt32BigEndian(data.AsSpan(BlendKeyOffset), key);
        }

        return data;
    }

    public override void Load(ReadOnlySpan<byte> data, Layer layer)
    {
        if (layer.IsGroup && ReadBlendKey(data) is { } key) layer.BlendMode = BlendModeKeys.Read(key);
    }

    public override bool Says(ReadOnlySpan<byte> data, Layer layer) => !layer.IsGroup || ReadBlendKey(data) is not { } key || BlendModeKeys.Read(key) == layer.BlendMode;

    public override bool IsMissed(Layer layer, PsdHabits habits) => false;

    public override byte[] Store(ReadOnlySpan<byte> stored, Layer layer, PsdHabits habits)
    {
        var data = stored.ToArray();
        if (layer.IsGroup && ReadBlendKey(stored) is { } key) BinaryPrimitives.WriteUInt32BigEndian(data.AsSpan(BlendKeyOffset), BlendModeKeys.Write(layer.BlendMode, key));
        return data;
    }
}
