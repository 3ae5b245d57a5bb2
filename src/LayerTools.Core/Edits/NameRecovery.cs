using LayerTools.Deliveries;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Finds the names that layers had in an older delivery. Where two layers fit equally well, neither is taken.</summary>
public sealed class NameRecovery
{
    private readonly Dictionary<Layer, RecoveredName> rows;

    private NameRecovery(LayerFile old, Dictionary<Layer, RecoveredName> rows) => (OldName, this.rows) = (old.Name, rows);

    /// <summary>What the older file is called.</summary>
    public string OldName { get; }

    /// <summary>Looks for the layers of a file in an older one. Pending edits of both count.</summary>
    /// <param name="old">The older delivery.</param>
    /// <param name="file">The file whose layers are to get their old names.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="LayeredFileException">A channel that has to be looked at is damaged, or a file changed on disk.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static NameRecovery Find(LayerFile old, LayerFile file, CancellationToken cancellation = default)
    {
        if (old is null) throw new ArgumentNullException(nameof(old));
        if (file is null) throw new ArgumentNullException(nameof(file));
        return new NameRecovery(old, DeliveryComparer.Match(old, file, cancellation).ToDictionary(match => match.New, match => Describe(match, old.Name)));
    }

    /// <summary>What is known of some layers, in their order.</summary>
    public IReadOnlyList<RecoveredName> Explain(IEnumerable<Layer> layers) => [.. layers.Select(Explain)];

    private RecoveredName Explain(Layer layer) => rows.TryGetValue(layer, out var row)
        ? row
        : new RecoveredName(layer, null, MatchEvidence.None, 0, $"Nothing in {OldName} is like it.");

    private static RecoveredName Describe(LayerMatch match, string oldName)
    {
        // Of two old layers with one name it does not matter which one it was.
        if (match.Rival is { } rival && !(rival.File == match.Old.File && rival.Name == match.Old.Name))
        {
            return new RecoveredName(match.New, null, match.Evidence, 0, rival.File == match.Old.File
                ? $"It could be '{match.Old.LayerPath}' or '{rival.LayerPath}' of {oldName}."
                : $"It could be '{match.Old.LayerPath}' of {oldName}, but so could '{rival.LayerPath}'.");
        }

        var found = $"'{match.Old.LayerPath}' of {oldName}";
        var (certainty, why) = match.Evidence switch
        {
            MatchEvidence.Id => (1, $"It has the id of {found}."),
            MatchEvidence.Path => (1, $"It has the path of {found}."),
            MatchEvidence.Fingerprint => (1, $"It holds the same pixels as {found}."),
            _ when match.New.IsGroup => (match.Likeness!.Value, $"It holds what {found} held."),
            _ => (match.Likeness!.Value, $"It looks like {found}."),
        };
        return new RecoveredName(match.New, match.Old.Name, match.Evidence, certainty, why);
    }
}
