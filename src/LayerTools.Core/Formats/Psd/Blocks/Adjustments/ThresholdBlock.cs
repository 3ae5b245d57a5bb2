using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Threshold: the level 2, filling 2.</summary>
internal static class ThresholdBlock
{
    public static Adjustment? Read(byte[] data) => new Threshold(new BlockInput(data).ReadUInt16());
}
