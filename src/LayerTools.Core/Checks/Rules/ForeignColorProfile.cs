using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;

namespace LayerTools.Checks.Rules;

/// <summary>A colour profile other than sRGB.</summary>
internal sealed class ForeignColorProfile : CheckRule
{
    public override string Id => nameof(ForeignColorProfile);

    public override string Title => "The colours are not in sRGB";

    public override string Reason =>
        "Programs that move figures take the numbers as sRGB, so that colours of another profile come out different (common practice). Asked of RGB files; the profile is known by its description (ICC.1, 'profileDescriptionTag').";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var file = context.File;
        if (file.ColorMode != ColorMode.Rgb || file.Detail.ColorProfile is null) yield break;
        using var reader = new PixelReader(file);
        var profile = reader.ReadProfile();
        if (profile is { IsSrgb: true }) yield break;
        yield return Find(context, "The file has a colour profile other than sRGB.", "Convert the file to sRGB in the painting program; assigning sRGB instead would change its colours.",
            profile?.Description is { } description ? PrintableText.Of(description) : "a profile without a readable description", "sRGB");
    }
}
