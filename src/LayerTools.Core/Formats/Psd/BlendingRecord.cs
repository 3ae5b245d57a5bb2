using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Reads how a layer blends beyond mode and opacity, from its record and the blocks 'knko' and 'brst' (PSD File Formats Specification, 'Layer blending ranges data', 'Knockout setting', 'Channel blending restrictions setting').</summary>
internal static class BlendingRecord
{
    /// <summary>dark begin 1, dark end 1, light begin 1, light end 1 for the layer, then the same for what lies below; first for grey, then for each channel.</summary>
    private const int RangeLength = 8;

    public static BlendingRules Read(PsdRecord record)
    {
        var rules = new BlendingRules
        {
            Knockout = ReadKnockout(record.GetData("knko")),
            ExcludedChannels = ReadExcluded(record.GetData("brst")),
            Ranges = ReadRanges(record.BlendingRanges),
        };
        return rules is { Knockout: Knockout.None, ExcludedChannels.Count: 0, Ranges.Count: 0 } ? BlendingRules.None : rules;
    }

    private static Knockout ReadKnockout(ReadOnlySpan<byte> data) => data.IsEmpty ? Knockout.None : data[0] switch { 0 => Knockout.None, 1 => Knockout.ToGroup, _ => Knockout.ToBottom };

    private static List<int> ReadExcluded(ReadOnlySpan<byte> data)
    {
        var channels = new List<int>();
        for (; data.Length >= 4; data = data.Slice(4)) channels.Add(BinaryPrimitives.ReadInt32BigEndian(data));
        return channels;
    }

    private static List<BlendingRange> ReadRanges(byte[] data)
    {
        var ranges = new List<BlendingRange>();
        for (var i = 0; (i + 1) * RangeLength <= data.Length; i++)
        {
            var range = new BlendingRange(i == 0 ? null : i - 1, ReadLimits(data, i * RangeLength), ReadLimits(data, (i * RangeLength) + 4));
            if (!range.Source.IsAll || !range.Backdrop.IsAll) ranges.Add(range);
        }

        return ranges;
    }

    private static BrightnessLimits ReadLimits(byte[] data, int at) => new(data[at], data[at + 1], data[at + 2], data[at + 3]);
}
