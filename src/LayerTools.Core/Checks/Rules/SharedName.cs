using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>Parts in different groups that share a name.</summary>
internal sealed class SharedName : CheckRule
{
    public override string Id => nameof(SharedName);

    public override string Title => "Parts in different groups share a name";

    public override string Reason => "Rigs mostly drop the groups, and then names have to be unique over the whole file (common practice). Of each group but the front-most the front-most part of that name is told; names that programs give are left to DefaultLookingName, those shared within a group to DuplicateName, and clipped layers are left out, since baking merges them.";

    public override Severity DefaultSeverity => Severity.Note;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var findings =
            from same in context.Parts.Where(part => !part.Clipped && !DefaultNames.IsDefault(part.Name)).GroupBy(part => part.Name, StringComparer.OrdinalIgnoreCase)
            let firsts = same.GroupBy(part => part.Parent).Select(siblings => siblings.First()).ToList()
            from part in firsts.Skip(1)
            select Find(
                context,
                part,
                $"The name is shared with {firsts[0].LayerPath} in another group.",
                Remedy.Edit(context.File, Advise(context, [.. same])),
                FormattableString.Invariant($"{same.Count()} layers"),
                "1 layer");
        return findings.OrderBy(finding => finding.LayerNumber);
    }

    /// <summary>Writes the sides of the groups into the names where these tell them apart, else numbers them.</summary>
    private static string Advise(CheckContext context, List<Layer> same)
    {
        var name = same[0].Name.Trim();
        var sides = context.Profile.Naming.Sides;
        if (same is [{ Side: Side.None } one, { Side: Side.None } other] && (Opposites.SideOf(one), Opposites.SideOf(other)) is (Side.Left, Side.Right) or (Side.Right, Side.Left))
        {
            return string.Join(" | ", same.Select(part => FormattableString.Invariant(
                $"Rename-Layer -LayerNumber {part.LayerNumber} -NewName {Quoted.Of($"{name} {(Opposites.SideOf(part) == Side.Left ? sides.Left : sides.Right)}")}")));
        }

        var numbers = string.Join(", ", same.Select(part => FormattableString.Invariant($"{part.LayerNumber}")));
        return $"Rename-Layer -LayerNumber {numbers} -NewName {Quoted.Of($"{name} {Numbering.Placeholder}")} -Number";
    }
}
