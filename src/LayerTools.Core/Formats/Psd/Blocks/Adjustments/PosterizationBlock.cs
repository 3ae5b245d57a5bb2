using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Posterisation: the number of steps 2, filling 2.</summary>
internal static class PosterizationBlock
{
    public static Adjustment? Read(byte[] data) => new BlockInput(data).ReadUInt16() is var steps and >= 2 and <= 255 ? new Posterization(steps) : null;
}
