using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Hue and saturation: for all colours, and for six ranges of hues.</summary>
internal static class HueSaturationBlock
{
    private const int Version = 2;
    private const int RangeCount = 6;

    public static Adjustment? Read(byte[] data)
    {
        // version 2, whether one hue for all 1, filling 1, that hue 2, saturation 2, lightness 2, shift of all colours 3 × 2,
        // then six times: where the range starts, is full, begins to end, ends 4 × 2, its shift 3 × 2
        var input = new BlockInput(data);
        if (input.ReadUInt16() != Version) return null;
        var colorizes = input.ReadByte() != 0;
        input.Skip(1);
        var colorization = ReadShift(input);
        var master = ReadShift(input);
        var ranges = new List<HueRange>();
        for (var i = 0; i < RangeCount; i++)
        {
            ranges.Add(new HueRange(input.ReadInt16(), input.ReadInt16(), input.ReadInt16(), input.ReadInt16(), ReadShift(input)));
        }

        return new HueSaturation(colorizes, colorization, master, ranges.FindAll(range => !range.Shift.IsNone));
    }

    private static HueShift ReadShift(BlockInput input) => new(input.ReadInt16(), input.ReadInt16(), input.ReadInt16());
}
