using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>A colour as blocks store it: a colour space and four numbers (PSD File Formats Specification, 'Color structure').</summary>
internal static class StoredColor
{
    private const int Rgb = 0;
    private const int Lab = 7;
    private const int Grey = 8;
    private const double WordUnit = 65535;
    private const double LabUnit = 100;
    private const double GreyUnit = 10000;

    /// <summary>The colour as sRGB, 0 to 1 each; null for a colour space that is not read.</summary>
    public static RgbTriple? Read(BlockInput input)
    {
        // space 2, numbers 4 × 2: RGB 0 to 65535; Lab in hundredths, two of them signed; grey 0 to 10000
        var space = input.ReadInt16();
        var first = input.ReadUInt16();
        var second = input.ReadUInt16();
        var third = input.ReadUInt16();
        input.Skip(2);
        return space switch
        {
            Rgb => new RgbTriple(first / WordUnit, second / WordUnit, third / WordUnit),
            Lab => LabColor.ToRgb(first / LabUnit, (short)second / LabUnit, (short)third / LabUnit),
            Grey => new RgbTriple(first / GreyUnit, first / GreyUnit, first / GreyUnit),
            _ => null,
        };
    }
}
