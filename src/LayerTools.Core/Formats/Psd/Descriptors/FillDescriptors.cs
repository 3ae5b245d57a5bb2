using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Fills in descriptors: of fill layers (blocks <c>SoCo</c>, <c>GdFl</c>, <c>PtFl</c>), of effects and of outlines.</summary>
internal static class FillDescriptors
{
    public static Fill ReadColor(Descriptor descriptor) =>
        DescriptorColors.Read(descriptor.GetDescriptor("Clr ")) is { } color ? new ColorFill(color) : new UndrawnFill("colour that cannot be told");

    /// <param name="descriptor">The descriptor.</param>
    /// <param name="origin">Where patterns begin that are linked with the layer, canvas px.</param>
    public static Fill ReadPattern(Descriptor descriptor, (double Right, double Down) origin)
    {
        if (descriptor.GetDescriptor("Ptrn")?.GetText("Idnt") is not { } id) return new UndrawnFill("pattern without a name");
        if (descriptor.GetNumber("Angl") is not (null or 0)) return new UndrawnFill("turned pattern");
        var phase = descriptor.GetDescriptor("phase");
        if ((descriptor.GetBool("Algn") ?? descriptor.GetBool("Lnkd")) == false) origin = (0, 0);
        return new PatternFill(id, (descriptor.GetNumber("Scl ") ?? 100) / 100, origin.Right + (phase?.GetNumber("Hrzn") ?? 0), origin.Down + (phase?.GetNumber("Vrtc") ?? 0));
    }
}
