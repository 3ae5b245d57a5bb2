using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A part without a mark.</summary>
internal sealed class UnmarkedPart : CheckRule
{
    public override string Id => nameof(UnmarkedPart);

    public override string Title => "A part has no mark";

    public override string Reason => "A mark tells how far a part is; without one nobody knows whether it was looked at. Not asked where the profile gives marks no meaning.";

    public override Severity DefaultSeverity => Severity.Note;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Profile.Marks.Count == 0) return [];
        var first = context.Profile.Marks.OrderBy(mark => mark.Value).ThenBy(mark => mark.Key).First().Key;
        return from layer in context.Parts where layer.Mark == Mark.None select Find(context, layer, "The part has no mark.", Remedy.Edit(layer, $"Set-Layer -Mark {first}"));
    }
}
