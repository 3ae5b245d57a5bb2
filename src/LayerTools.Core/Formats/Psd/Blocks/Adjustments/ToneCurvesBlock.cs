using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Curves, as points or as a level for each level.</summary>
internal static class ToneCurvesBlock
{
    private const int Version = 1;
    private const int MostPoints = 255;
    private const int ChannelBits = 32;

    public static Adjustment? Read(byte[] data)
    {
        // form 1 (0 points, 1 levels), version 2, a bit for each channel that follows 4 (lowest: all colours together); then for each its
        // curve: count 2, points of output 2 and input 2; or 256 levels of 1. What follows after 'Crv ' says the same once more.
        var input = new BlockInput(data);
        var isMap = input.ReadByte() switch { 0 => false, 1 => true, _ => (bool?)null };
        if (isMap is null || input.ReadUInt16() != Version) return null;
        var channels = input.ReadUInt32();
        var curves = new List<ToneCurve>();
        for (var channel = 0; channel < ChannelBits; channel++)
        {
            if ((channels & (1u << channel)) == 0) continue;
            curves.Add(isMap.Value ? new ToneCurve(channel, [], input.ReadBytes(256)) : new ToneCurve(channel, ReadPoints(input), Map: null));
        }

        return new ToneCurves(curves);
    }

    private static List<(int Input, int Output)> ReadPoints(BlockInput input)
    {
        var count = input.ReadUInt16();
        if (count > MostPoints) throw input.Damaged(FormattableString.Invariant($"A curve has {count} points."));
        var points = new List<(int Input, int Output)>();
        for (var i = 0; i < count; i++)
        {
            var output = input.ReadUInt16();
            var level = input.ReadUInt16();
            if (output > 255 || level > 255 || (i > 0 && level <= points[i - 1].Input)) throw input.Damaged("A curve's points are out of order.");
            points.Add((level, output));
        }

        return points;
    }
}
