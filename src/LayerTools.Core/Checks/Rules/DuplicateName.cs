using LayerTools.Edits;

namespace LayerTools.Checks.Rules;

/// <summary>Layers of one group that share a name.</summary>
internal sealed class DuplicateName : CheckRule
{
    public override string Id => nameof(DuplicateName);

    public override string Title => "Layers of one group share a name";

    public override string Reason => "Scripts and rigs find parts by their names, so two of one name cannot be told apart, nor can two that differ in upper and lower case alone. Each layer but the front-most is named.";

    public override Severity DefaultSeverity => Severity.Error;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var alike = context.File.GetLayers().GroupBy(layer => layer.Parent).SelectMany(group => group.GroupBy(layer => layer.Name, StringComparer.OrdinalIgnoreCase))
            .Select(same => same.ToList()).Where(same => same.Count > 1);
        var findings =
            from same in alike
            let numbers = string.Join(", ", same.Select(other => FormattableString.Invariant($"{other.LayerNumber}")))
            let command = $"Rename-Layer -LayerNumber {numbers} -NewName {Quoted.Of($"{same[0].Name.Trim()} {Numbering.Placeholder}")} -Number"
            let remedy = Remedy.Edit(context.File, command)
            from layer in same.Skip(1)
            select Find(context, layer, FormattableString.Invariant($"The name is shared with layer number {same[0].LayerNumber} of the same group."), remedy,
                FormattableString.Invariant($"{same.Count} layers"), "1 layer");
        return findings.OrderBy(finding => finding.LayerNumber);
    }
}
