using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Exposure.</summary>
internal static class ExposureBlock
{
    private const int Version = 1;

    public static Adjustment? Read(byte[] data)
    {
        // version 2, then floats of 4: stops, offset, gamma
        var input = new BlockInput(data);
        if (input.ReadUInt16() != Version) return null;
        var exposure = new Exposure(input.ReadSingle(), input.ReadSingle(), input.ReadSingle());
        return exposure.Gamma > 0 ? exposure : null;
    }
}
