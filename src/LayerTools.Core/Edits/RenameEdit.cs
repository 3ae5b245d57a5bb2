using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>
/// Renames layers. All new names of a file are worked out first, so that names can be swapped in one go; if any of them is empty, too long,
/// holds control characters or would be shared with a layer of the same group, nothing is renamed.
/// </summary>
public sealed class RenameEdit : LayerEdit
{
    /// <summary>What a change of name is called in a change list.</summary>
    public const string Property = "Name";

    private readonly NameSource source;
    private readonly bool allowDuplicate;
    private readonly Numbering? numbering;

    private RenameEdit(NameSource source, RenameOptions? options, bool allowDuplicate = false)
    {
        this.source = source;
        this.allowDuplicate = allowDuplicate || options is { AllowDuplicate: true };
        numbering = options?.Numbering;
    }

    /// <summary>New names by a regular expression; only names that match are changed. Case is ignored unless <paramref name="caseSensitive"/>, and no culture counts.</summary>
    /// <param name="pattern">The .NET regular expression.</param>
    /// <param name="replacement">What takes the place of each match, with <c>$1</c> and the like.</param>
    /// <param name="caseSensitive">Tells upper from lower case.</param>
    /// <param name="options">Numbers and duplicates; null for none of either.</param>
    /// <exception cref="LayeredFileException">The pattern is no regular expression.</exception>
    public static RenameEdit ByPattern(string pattern, string replacement, bool caseSensitive = false, RenameOptions? options = null) =>
        new(new PatternNames(pattern, replacement, caseSensitive), options);

    /// <summary>New names that are worked out for each layer.</summary>
    /// <param name="rename">Gets the layer and its running number, front to back, from the numbering's start or 1; gives the new name, or null to leave the layer alone.</param>
    /// <param name="options">Numbers and duplicates; null for none of either.</param>
    public static RenameEdit ByFunction(Func<Layer, int, string?> rename, RenameOptions? options = null) => new(new ComputedNames(rename), options);

    /// <summary>
    /// New names from a list. A row with two names changes every chosen layer of that name or path. A row of a change list changes one layer:
    /// the one with the row's id, else the one with its number, else the only one of its name, else the one of its name in the row's group, and
    /// only if the layer has the name that the row expects. Rows about other properties are passed over; change rows that find no layer are warned about.
    /// </summary>
    /// <param name="entries">The rows, in the order the changes were made.</param>
    /// <param name="reverse">Takes the changes back, last one first. Names that were shared before the change may then be shared again.</param>
    /// <param name="options">Numbers and duplicates; null for none of either.</param>
    public static RenameEdit ByList(IEnumerable<RenameEntry> entries, bool reverse = false, RenameOptions? options = null) =>
        new(new ListedNames(entries, reverse), options, allowDuplicate: reverse);

    /// <summary>The names that layers had in an older delivery. Those that were not found, or that could be one of two, keep their names; of the latter a warning tells.</summary>
    /// <param name="recovery">What was found.</param>
    /// <param name="options">Duplicates; null for none.</param>
    public static RenameEdit ByRecovery(NameRecovery recovery, RenameOptions? options = null) => new(new RecoveredNames(recovery), options);

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var warnings = new List<string>();
        var chosen = Selection.InStackOrder(file, layers);
        var newNames = Number(source.Propose(file, chosen, numbering?.Start ?? 1, warnings))
            .Where(item => item.Name != item.Layer.Name)
            .ToDictionary(item => item.Layer, item => item.Name);
        Check(file, newNames, warnings);

        var steps = chosen.Where(newNames.ContainsKey).Select(layer => new EditStep(layer, Property, layer.Name, newNames[layer])).ToList();
        return new EditPlan(file, steps, changesPicture: false, () =>
        {
            foreach (var item in newNames) item.Key.Name = item.Value;
        })
        {
            Warnings = warnings,
        };
    }

    private IEnumerable<(Layer Layer, string Name)> Number(IEnumerable<(Layer Layer, string Name)> proposals) =>
        numbering is null ? proposals : proposals.Select((item, i) => (item.Layer, numbering.Apply(item.Name, numbering.Start + i)));

    private void Check(LayerFile file, Dictionary<Layer, string> newNames, List<string> warnings)
    {
        var refusal = new Refusal(file, "Renaming");
        foreach (var item in newNames.OrderBy(item => item.Key.LayerNumber))
        {
            if (NameRules.FindProblem(item.Value) is { } problem) refusal.Add($"'{item.Key.LayerPath}' would get a name which {problem}", NameRules.NameRemedy);
        }

        foreach (var (name, sharing) in NameRules.FindDuplicates(newNames))
        {
            // A name that is refused anyway says enough once.
            if (NameRules.FindProblem(name) is not null) continue;
            var who = string.Join(", ", sharing.Select(layer => $"'{layer.LayerPath}' (number {layer.LayerNumber}{(newNames.ContainsKey(layer) ? "" : ", not renamed")})"));
            if (allowDuplicate) warnings.Add($"These layers of one group now share the name '{name}': {who}.");
            else refusal.Add($"'{name}' would be the name of {sharing.Count} layers in one group: {who}", NameRules.DuplicateRemedy);
        }

        refusal.ThrowIfAny();
    }
}
