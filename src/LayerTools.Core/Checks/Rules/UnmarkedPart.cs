using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A part without a mark.</summary>
internal sealed class UnmarkedPart : CheckRule
{
    /// <summary>So many are named one by one, however few parts there are.</summary>
    private const int MostSingle = 5;

    public override string Id => nameof(UnmarkedPart);

    public override string Title => "A part has no mark";

    public override string Reason => "A mark tells how far a part is; without one nobody knows whether it was looked at. Not asked where the profile gives marks no meaning. Where more than half of the parts have none, the file is told once.";

    public override Severity DefaultSeverity => Severity.Note;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Profile.Marks.Count == 0) return [];
        var first = context.Profile.Marks.OrderBy(mark => mark.Value).ThenBy(mark => mark.Key).First().Key;
        var unmarked = context.Parts.Where(layer => layer.Mark == Mark.None).ToList();
        if (unmarked.Count > MostSingle && unmarked.Count * 2 > context.Parts.Count)
        {
            var told = FormattableString.Invariant($"{unmarked.Count} of {context.Parts.Count} parts have no mark.");
            return [Find(context, told, Remedy.Show(context.File, "Get-Layer -Mark None"), FormattableString.Invariant($"{unmarked.Count} parts"), "0 parts")];
        }

        return unmarked.Select(layer => Find(context, layer, "The part has no mark.", Remedy.Edit(layer, $"Set-Layer -Mark {first}")));
    }
}
