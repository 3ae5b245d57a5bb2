using LayerTools.Measures.Budget;

namespace LayerTools.Checks.Rules;

/// <summary>More pages of textures than the profile allows, or a part that no page holds.</summary>
internal sealed class TextureBudgetExceeded : CheckRule
{
    public override string Id => nameof(TextureBudgetExceeded);

    public override string Title => "The parts need more texture pages than the profile allows";

    public override string Reason =>
        "Textures take memory by whole pages, and a part that is larger than a page cannot be packed at all. Parts are packed with the page size, padding and turns of the profile.";

    public override Severity DefaultSeverity => Severity.Warning;

    public override bool NeedsPixels => true;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var textures = context.Profile.Textures;
        var parts = TexturePages.FindParts(context.Survey, null);
        var large = TexturePages.FindTooLarge(textures, parts);
        foreach (var part in large)
        {
            var most = textures.PageSize - (2 * textures.Padding);
            var remedy = TexturePages.FindRemedy(textures, [part]) is { } option
                ? Remedy.Show(context.File, $"Measure-LayerBudget {option}")
                : "Cut the part in pieces, or make it smaller.";
            yield return Find(context, part.Layer, "The part is larger than a texture page.", remedy,
                FormattableString.Invariant($"{part.Painted.Width} x {part.Painted.Height} px"), FormattableString.Invariant($"{most} x {most} px"));
        }

        if (large.Count > 0 || textures.Pages is not { } limit) yield break;
        var pages = TexturePages.Pack(context.File, context.Survey, textures, limit, context.Cancellation).Count;
        if (pages <= limit) yield break;
        yield return Find(context, FormattableString.Invariant($"The parts need {pages} texture pages of {textures.PageSize} px."),
            Remedy.Show(context.File, "Measure-LayerBudget -By Part -Top 10"), Count(pages), Count(limit));
    }

    private static string Count(int pages) => FormattableString.Invariant($"{pages} page{(pages == 1 ? string.Empty : "s")}");
}
