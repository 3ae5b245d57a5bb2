using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Colour balance.</summary>
internal static class ColorBalanceBlock
{
    public static Adjustment? Read(byte[] data)
    {
        // 3 × 2 for dark, middle and light tones each: towards red, green, blue; then whether luminosity is kept 1
        var input = new BlockInput(data);
        return new ColorBalance(ReadShift(input), ReadShift(input), ReadShift(input), input.ReadByte() != 0);
    }

    private static RgbTriple ReadShift(BlockInput input) => new(input.ReadInt16(), input.ReadInt16(), input.ReadInt16());
}
