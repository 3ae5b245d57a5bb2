namespace LayerTools.Checks.Rules;

/// <summary>A layer that is a part by its name and shows nothing.</summary>
internal sealed class EmptyPart : PartRule
{
    public override string Id => nameof(EmptyPart);

    public override string Title => "The part is empty";

    public override string Reason => "Nothing of it is seen, so it was forgotten or left over. Pixels of alpha 1 to 7 are not seen, and what the part's masks hide is not either.";

    internal override IEnumerable<Finding> Check(CheckContext context) => PartsOf(context).Where(part => part.IsEmpty).Select(part => Find(
        context,
        part.Layer,
        part.PaintedArea == 0 ? "Nothing is painted on this layer." : "Only nearly invisible pixels are painted on this layer.",
        Remedy.Edit(part.Layer, "Remove-Layer"),
        FormattableString.Invariant($"{part.PaintedArea} px² of alpha 1 to {Measures.Survey.PartSurvey.Faint}"),
        "something to be seen"));
}
