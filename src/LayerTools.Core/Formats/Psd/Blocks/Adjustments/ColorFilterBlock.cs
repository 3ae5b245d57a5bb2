using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Pixels.Colors;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>A colour filter.</summary>
internal static class ColorFilterBlock
{
    private const double XyzUnit = 65536;
    private const double Percent = 100;

    public static Adjustment? Read(byte[] data)
    {
        // version 2; in version 3 the colour as XYZ 3 × 4 (16.16 fixed), in version 2 as space 2 and numbers 4 × 2; density 4, luminosity kept 1
        var input = new BlockInput(data);
        RgbTriple? color = input.ReadUInt16() switch
        {
            2 => StoredColor.Read(input),
            3 => LabColor.XyzToRgb(input.ReadInt32() / XyzUnit, input.ReadInt32() / XyzUnit, input.ReadInt32() / XyzUnit),
            _ => null,
        };
        return color is { } known ? new ColorFilter(known, Math.Max(0, Math.Min(1, input.ReadInt32() / Percent)), input.ReadByte() != 0) : null;
    }
}
