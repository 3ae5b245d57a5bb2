using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Ledgers;

/// <summary>Tells how far the layers of a file are, joined with ledgers, pending edits included.</summary>
/// <param name="rules">How states follow.</param>
internal sealed class LedgerStatusReader(LedgerRules rules)
{
    private readonly StatusReader reader = new(rules.Options);

    /// <summary>The status of every chosen layer that is no group, front to back; behind them, if all layers are meant, those that vanished, by their paths.</summary>
    /// <param name="file">The file.</param>
    /// <param name="layers">The chosen layers; null for all.</param>
    /// <param name="ledgers">The ledgers, perhaps none: then states follow from marks.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or a pattern takes too long.</exception>
    public (IReadOnlyList<LayerStatus> Statuses, IReadOnlyList<LedgerClash> Clashes) Read(LayerFile file, IReadOnlyList<Layer>? layers, IReadOnlyList<LayerLedger> ledgers, CancellationToken cancellation)
    {
        var statuses = reader.Read(file, layers);
        using var parts = new LedgerParts(file, rules.Options, cancellation);
        var join = new LedgerJoin(parts, ledgers, rules);
        var rows = join.Rows.ToDictionary(row => row.Layer!.LayerNumber);
        var joined = statuses.Select(status => Join(status, rows.TryGetValue(status.LayerNumber, out var row) ? row : null));
        if (layers is null) joined = joined.Concat(join.Vanished.OrderBy(row => row.Entry!.LayerPath, StringComparer.Ordinal).Select(row => Tell(row.Entry!, parts)));
        return ([.. joined], join.Clashes);
    }

    /// <summary>Without any mark and ledger nothing says what is finished, as without a ledger at all.</summary>
    private LedgerStatus Join(LayerStatus status, LedgerRow? row)
    {
        if (row is null) return new LedgerStatus(status) { Done = null };
        var isKnown = row.Entry is not null || status.FileHasMarks || rules.Options.DoneName is not null;
        return new LedgerStatus(status)
        {
            State = isKnown ? row.State : null,
            Done = status.IsPart && isKnown && row.State is { } state ? state == PartState.Done : null,
            Note = row.Entry?.Note ?? string.Empty,
            Who = row.Entry?.Who ?? string.Empty,
            When = row.Entry?.When,
            MatchedBy = row.Evidence,
            Candidates = string.Join("; ", row.Candidates),
        };
    }

    private static LedgerStatus Tell(LedgerEntry entry, LedgerParts parts)
    {
        var end = FindLastSeparator(entry.LayerPath);
        var name = entry.LayerPath.Substring(end + 1).Replace("\\/", "/");
        return new LedgerStatus(new LayerStatus
        {
            FilePath = parts.File.Path,
            LayerPath = entry.LayerPath,
            LayerNumber = 0,
            Name = name,
            Group = end < 0 ? string.Empty : entry.LayerPath.Substring(0, end),
            Side = SideName.Parse(name).Side,
            Mark = entry.Mark,
            Role = LayerRole.Part,
            IsPart = false,
            Done = null,
            State = PartState.Missing,
            HasOpposite = null,
            MissingOpposite = false,
            PaintedArea = 0,
            FileHasMarks = parts.HasMarks,
        })
        {
            Note = entry.Note,
            Who = entry.Who,
            When = entry.When,
        };
    }

    /// <summary>The last '/' that joins names and is not part of one; -1 if there is none.</summary>
    private static int FindLastSeparator(string path)
    {
        var end = path.LastIndexOf('/');
        while (end > 0 && path[end - 1] == '\\') end = path.LastIndexOf('/', end - 1);
        return end;
    }
}
