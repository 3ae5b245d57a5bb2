using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Levels: a range for all colours together and one for each colour.</summary>
internal static class LevelsBlock
{
    private const int Version = 2;
    private const int UsedRanges = 5;

    public static Adjustment? Read(byte[] data)
    {
        // version 2, then 29 ranges of 5 × 2: black, white, darkest, lightest, gamma in hundredths
        var input = new BlockInput(data);
        if (input.ReadUInt16() != Version) return null;
        var ranges = new List<LevelsRange>();
        while (ranges.Count < UsedRanges && input.Remaining > 0)
        {
            ranges.Add(new LevelsRange(input.ReadUInt16(), input.ReadUInt16(), input.ReadUInt16(), input.ReadUInt16(), input.ReadUInt16() / 100.0));
        }

        return ranges.TrueForAll(IsSound) ? new Levels(ranges) : null;
    }

    private static bool IsSound(LevelsRange range) =>
        range.Black < range.White && range.White <= 255 && range.Darkest <= 255 && range.Lightest <= 255 && range.Gamma > 0;
}
