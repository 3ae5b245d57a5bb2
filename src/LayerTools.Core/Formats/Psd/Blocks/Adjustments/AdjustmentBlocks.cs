using LayerTools.Errors;
using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>The table of adjustments that can be read, by the key of their block (PSD File Formats Specification, 'Additional Layer Information').</summary>
internal static class AdjustmentBlocks
{
    private static readonly Dictionary<string, Func<byte[], Adjustment?>> Readers = new(StringComparer.Ordinal)
    {
        ["nvrt"] = _ => new Inversion(),
        ["CgEd"] = BrightnessContrastBlock.ReadDescriptor,
        ["brit"] = BrightnessContrastBlock.Read,
        ["levl"] = LevelsBlock.Read,
        ["curv"] = ToneCurvesBlock.Read,
        ["expA"] = ExposureBlock.Read,
        ["hue2"] = HueSaturationBlock.Read,
        ["blnc"] = ColorBalanceBlock.Read,
        ["blwh"] = GreyMixBlock.Read,
        ["thrs"] = ThresholdBlock.Read,
        ["post"] = PosterizationBlock.Read,
        ["grdm"] = GradientMapBlock.Read,
        ["mixr"] = ChannelMixBlock.Read,
        ["phfl"] = ColorFilterBlock.Read,
    };

    /// <summary>The layer's adjustment; null if it has none, or one that is not known or cannot be understood. <c>CgEd</c> says anew what <c>brit</c> beside it says for older readers.</summary>
    public static Adjustment? Read(PsdRecord record)
    {
        foreach (var reader in Readers)
        {
            if (record.Find(PsdKey.Parse(reader.Key)) is null) continue;
            try
            {
                return reader.Value(record.GetData(reader.Key).ToArray());
            }
            catch (LayeredFileException error) when (error.Kind is LayeredFileErrorKind.Damaged or LayeredFileErrorKind.LimitExceeded)
            {
                // Nothing but this layer's look depends on the block: whoever draws names the layer.
                return null;
            }
        }

        return null;
    }
}
