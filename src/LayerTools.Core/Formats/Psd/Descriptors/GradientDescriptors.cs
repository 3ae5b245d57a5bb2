using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Gradients in descriptors: the colours (<c>Grad</c>) and how they are laid out.</summary>
internal static class GradientDescriptors
{
    private const double LastPlace = 4096;
    private const string MethodType = "gradientInterpolationMethodType";

    /// <summary>A gradient with its layout, or an <see cref="UndrawnFill"/> that says what is in the way.</summary>
    public static Fill ReadFill(Descriptor descriptor)
    {
        if (descriptor.GetDescriptor("Grad") is not { } colors) return new UndrawnFill("gradient without colours");
        if (colors.GetEnum("GrdF") is not "CstS") return new UndrawnFill("gradient of noise");
        if (descriptor.Items.Concat(colors.Items).Any(item => item.Value is DescriptorEnum { Type: MethodType, Value: not "Gcls" })) return new UndrawnFill("gradient with another way from colour to colour");
        if (TellForm(descriptor.GetEnum("Type")) is not { } form) return new UndrawnFill("gradient of unknown form");
        if (Read(colors) is not { } gradient) return new UndrawnFill("gradient in colours that depend on a setting or cannot be told");
        var shift = descriptor.GetDescriptor("Ofst");
        return new GradientFill(
            gradient,
            form,
            descriptor.GetNumber("Angl") ?? 0,
            (descriptor.GetNumber("Scl ") ?? 100) / 100,
            descriptor.GetBool("Rvrs") ?? false,
            descriptor.GetBool("Algn") ?? true,
            (shift?.GetNumber("Hrzn") ?? 0) / 100,
            (shift?.GetNumber("Vrtc") ?? 0) / 100);
    }

    /// <summary>The colours alone; null where there are none, or one of them cannot be told from the file.</summary>
    public static Gradient? Read(Descriptor gradient)
    {
        var colors = new List<ColorStop>();
        foreach (var stop in gradient.GetDescriptors("Clrs"))
        {
            if (stop.GetEnum("Type") is not (null or "UsrS") || DescriptorColors.Read(stop.GetDescriptor("Clr ")) is not { } color) return null;
            colors.Add(new ColorStop(ReadPlace(stop), ReadMidpoint(stop), color));
        }

        if (colors.Count == 0) return null;
        var opacities = gradient.GetDescriptors("Trns").Select(stop => new OpacityStop(ReadPlace(stop), ReadMidpoint(stop), (float)Clamp((stop.GetNumber("Opct") ?? 100) / 100))).ToList();
        if (opacities.Count == 0) opacities.Add(new OpacityStop(0, 0.5, 1f));
        return new Gradient([.. colors.OrderBy(stop => stop.Place)], [.. opacities.OrderBy(stop => stop.Place)], Clamp((gradient.GetNumber("Intr") ?? LastPlace) / LastPlace));
    }

    private static GradientForm? TellForm(string? type) => type switch
    {
        "Lnr " => GradientForm.Linear,
        "Rdl " => GradientForm.Radial,
        "Angl" => GradientForm.Conic,
        "Rflc" => GradientForm.Mirrored,
        "Dmnd" => GradientForm.FourSided,
        _ => null,
    };

    private static double ReadPlace(Descriptor stop) => Clamp((stop.GetNumber("Lctn") ?? 0) / LastPlace);

    private static double ReadMidpoint(Descriptor stop) => Clamp((stop.GetNumber("Mdpn") ?? 50) / 100);

    private static double Clamp(double value) => Math.Max(0, Math.Min(1, value));
}
