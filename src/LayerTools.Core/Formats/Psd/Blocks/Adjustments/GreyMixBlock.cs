using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>The mix of colours to grey, a descriptor.</summary>
internal static class GreyMixBlock
{
    private static readonly string[] WeightKeys = ["Rd  ", "Yllw", "Grn ", "Cyn ", "Bl  ", "Mgnt"];

    public static Adjustment? Read(byte[] data)
    {
        var descriptor = DescriptorReader.ReadVersioned(data, 0, "adjustment");
        var weights = new List<double>();
        foreach (var key in WeightKeys)
        {
            if (descriptor.GetNumber(key) is not { } weight) return null;
            weights.Add(weight);
        }

        if (descriptor.GetBool("useTint") is not true) return new GreyMix(weights, Tint: null);
        return ReadTint(descriptor.GetDescriptor("tintColor")) is { } tint ? new GreyMix(weights, tint) : null;
    }

    private static RgbTriple? ReadTint(Descriptor? color) =>
        color?.GetNumber("Rd  ") is { } red && color.GetNumber("Grn ") is { } green && color.GetNumber("Bl  ") is { } blue ? new RgbTriple(red / 255, green / 255, blue / 255) : null;
}
