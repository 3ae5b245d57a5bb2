using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>A channel mix.</summary>
internal static class ChannelMixBlock
{
    private const int Version = 1;
    private const int Colors = 3;

    public static Adjustment? Read(byte[] data)
    {
        // version 2, whether all become the same 2, then for each channel: parts of four channels 4 × 2, constant 2
        var input = new BlockInput(data);
        if (input.ReadUInt16() != Version) return null;
        var count = input.ReadUInt16() != 0 ? 1 : Colors;
        var rows = new List<ChannelMixRow>();
        for (var i = 0; i < count; i++)
        {
            var (red, green, blue) = (input.ReadInt16(), input.ReadInt16(), input.ReadInt16());
            input.Skip(2);
            rows.Add(new ChannelMixRow(red, green, blue, input.ReadInt16()));
        }

        return new ChannelMix(rows);
    }
}
