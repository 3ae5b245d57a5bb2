using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Fills in descriptors: of fill layers (blocks <c>SoCo</c>, <c>GdFl</c>, <c>PtFl</c>), of effects and of outlines.</summary>
internal static class FillDescriptors
{
    public static Fill ReadColor(Descriptor descriptor) =>
        DescriptorColors.Read(descriptor.GetDescriptor("Clr ")) is { } color ? new ColorFill(color) : new UndrawnFill("colour that cannot be told");

    public static Fill ReadPattern(Descriptor descriptor)
    {
        if (descriptor.GetDescriptor("Ptrn")?.GetText("Idnt") is not { } id) return new UndrawnFill("pattern without a name");
        if (descriptor.GetNumber("Angl") is not (null or 0)) return new UndrawnFill("turned pattern");
        var phase = descriptor.GetDescriptor("phase");
        return new PatternFill(id, (descriptor.GetNumber("Scl ") ?? 100) / 100, phase?.GetNumber("Hrzn") ?? 0, phase?.GetNumber("Vrtc") ?? 0);
    }
}
