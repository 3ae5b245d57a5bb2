using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model.Adjustments;

namespace LayerTools.Formats.Psd.Blocks.Adjustments;

/// <summary>Brightness and contrast, in the older form and as a descriptor.</summary>
internal static class BrightnessContrastBlock
{
    private const int UsualMiddle = 127;

    public static Adjustment? Read(byte[] data)
    {
        // brightness 2, contrast 2, middle 2, whether Lab alone 1
        var input = new BlockInput(data);
        return new BrightnessContrast(input.ReadInt16(), input.ReadInt16(), input.ReadInt16(), IsStraight: true);
    }

    public static Adjustment? ReadDescriptor(byte[] data)
    {
        var descriptor = DescriptorReader.ReadVersioned(data, 0, "adjustment");
        if (descriptor.GetNumber("Brgh") is not { } brightness || descriptor.GetNumber("Cntr") is not { } contrast) return null;
        var middle = descriptor.GetNumber("means") ?? UsualMiddle;
        return new BrightnessContrast(Limit(brightness), Limit(contrast), Limit(middle), descriptor.GetBool("useLegacy") ?? false);
    }

    private static int Limit(double number) => (int)Math.Max(-255, Math.Min(255, number));
}
