using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>A gradient by luminosity.</summary>
internal static class GradientMapBlock
{
    private const double LongestWay = 4096;
    private const double Percent = 100;
    private const int MostStops = 4096;

    public static Adjustment? Read(byte[] data)
    {
        // version 2 (1 or 3), reversed 1, dithered 1, in version 3 the way of mixing 4, name (count 4, units of 2), count of colours 2, then for
        // each: place 4 (0 to 4096), middle in percent 4, colour space 2, numbers 4 × 2, kind 2. The rest says how noise would look.
        var input = new BlockInput(data);
        var version = input.ReadUInt16();
        if (version is not (1 or 3)) return null;
        var isReversed = input.ReadByte() != 0;
        input.Skip(1);
        if (version == 3 && input.ReadUInt32() != PsdKey.Parse("Lnr ")) return null;
        var nameLength = input.ReadUInt32();
        if (nameLength > input.Remaining / 2) throw input.Damaged("The gradient's name is too long.");
        input.Skip(2 * (int)nameLength);
        var count = input.ReadUInt16();
        if (count is 0 or > MostStops) return null;
        var stops = new List<GradientMapStop>();
        for (var i = 0; i < count; i++)
        {
            var place = Limit(input.ReadUInt32() / LongestWay);
            var middle = Limit(input.ReadUInt32() / Percent);
            var color = StoredColor.Read(input);
            // 0 is a colour of its own; others stand for the colours that were chosen when the gradient was drawn, and are stored too.
            input.Skip(2);
            if (color is not { } known) return null;
            stops.Add(new GradientMapStop(place, middle, known));
        }

        stops.Sort((one, other) => one.Place.CompareTo(other.Place));
        return new GradientMap(stops, isReversed);
    }

    private static double Limit(double value) => Math.Min(1, value);
}
