using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>A name with something at its ends that nobody sees.</summary>
internal sealed class UntrimmedName : CheckRule
{
    public override string Id => nameof(UntrimmedName);

    public override string Title => "The name has spaces at its ends";

    public override string Reason => "Nobody sees them, and yet 'Arm L ' is another name than 'Arm L' for scripts, pairs and rigs. White space of any width, control characters and signs without a shape count.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var layer in context.File.GetLayers())
        {
            var trimmed = TrimmedName.Of(layer.Name);
            if (trimmed.Length == 0 || trimmed == layer.Name) continue;
            yield return Find(context, layer, "The name begins or ends with a space or another sign that nobody sees.", Remedy.Repair(context, Id),
                FormattableString.Invariant($"{layer.Name.Length} characters"), FormattableString.Invariant($"{trimmed.Length} characters"));
        }
    }
}
