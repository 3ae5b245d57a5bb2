using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>
/// The parts of a file joined with one or several ledgers of it. Each ledger is matched with the file for itself, so that people may have kept theirs of different versions;
/// then the entry that was set last holds for each part.
/// </summary>
internal sealed class LedgerJoin
{
    private readonly LedgerParts parts;
    private readonly LedgerRules rules;
    private readonly List<LedgerClash> clashes = [];

    /// <param name="parts">The parts of the file.</param>
    /// <param name="ledgers">The ledgers, perhaps none.</param>
    /// <param name="rules">How states follow.</param>
    public LedgerJoin(LedgerParts parts, IReadOnlyList<LayerLedger> ledgers, LedgerRules rules)
    {
        (this.parts, this.rules) = (parts, rules);
        var matches = ledgers.SelectMany(ledger => LedgerMatcher.Match(ledger.Entries, parts)).ToList();
        var byPart = matches.Where(match => match.Part is not null).ToLookup(match => match.Part!);
        Rows = [.. parts.Layers.Select(layer => Join(layer, byPart[layer]))];
        var left = matches.Where(match => match.Part is null).ToList();
        Vanished = [.. left.Where(match => match.Evidence == LedgerEvidence.None).Select(match => match.Entry!).GroupBy(LedgerKey.Of).Select(Join)];
        Undecided = LedgerMerge.Merge(left.Where(match => match.Evidence == LedgerEvidence.Ambiguous).Select(match => match.Entry!));
    }

    /// <summary>The parts of the file, front to back.</summary>
    public IReadOnlyList<LedgerRow> Rows { get; }

    /// <summary>The parts that are in a ledger and no longer in the file.</summary>
    public IReadOnlyList<LedgerRow> Vanished { get; }

    /// <summary>The entries that could be about several parts.</summary>
    public IReadOnlyList<LedgerEntry> Undecided { get; }

    /// <summary>Where people said different things.</summary>
    public IReadOnlyList<LedgerClash> Clashes => clashes;

    private LedgerRow Join(Layer layer, IEnumerable<LedgerMatch> matches)
    {
        var said = matches.Where(match => match.Entry is not null).ToList();
        if (said.Count > 0)
        {
            var winner = Choose(layer.LayerPath, said.Select(match => match.Entry!));
            return new LedgerRow(layer, winner, said.First(match => match.Entry!.Equals(winner)).Evidence, [], rules.Resolve(winner, layer, parts));
        }

        var candidates = matches.SelectMany(match => match.Candidates).Distinct().ToList();
        return candidates.Count > 0 ? new LedgerRow(layer, null, LedgerEvidence.Ambiguous, candidates, null) : new LedgerRow(layer, null, LedgerEvidence.None, [], rules.Start(layer));
    }

    private LedgerRow Join(IGrouping<LedgerKey, LedgerEntry> vanished) => new(null, Choose(vanished.Key.LayerPath, vanished), LedgerEvidence.None, [], PartState.Missing);

    private LedgerEntry Choose(string path, IEnumerable<LedgerEntry> said)
    {
        var (winner, clashing) = LedgerMerge.Choose(said);
        clashes.AddRange(clashing.Select(other => new LedgerClash
        {
            LayerPath = path,
            State = winner.State,
            Note = winner.Note,
            Who = winner.Who,
            When = winner.When,
            OtherState = other.State,
            OtherNote = other.Note,
            OtherWho = other.Who,
            OtherWhen = other.When,
            FilePath = parts.File.Path,
        }));
        return winner;
    }
}
