using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>A name longer than the profile allows.</summary>
internal sealed class OverlongName : CheckRule
{
    public override string Id => nameof(OverlongName);

    public override string Title => "The name is too long";

    public override string Reason => "Long names are cut off in lists, and some programs keep only their beginning. The longest that is allowed is the profile's naming.longestName, counted in UTF-16 units.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var longest = context.Profile.Naming.LongestName;
        return
            from layer in context.File.GetLayers()
            where layer.Name.Length > longest
            let command = $"Rename-Layer {Remedy.Choose(layer)} -NewName {Quoted.Of(Shorten(layer.Name, longest))} -Preview"
            select Find(context, layer, "The name is longer than the profile allows.", Remedy.Show(context.File, command),
                FormattableString.Invariant($"{layer.Name.Length} characters"), FormattableString.Invariant($"{longest} characters"));
    }

    private static string Shorten(string name, int longest)
    {
        var end = char.IsHighSurrogate(name[longest - 1]) ? longest - 1 : longest;
        return TrimmedName.Of(name.Substring(0, end));
    }
}
