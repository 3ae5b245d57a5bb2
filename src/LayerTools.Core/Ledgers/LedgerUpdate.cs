using LayerTools.Images;
using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>Brings a ledger up to date with its file, and sets states and notes in it.</summary>
internal sealed record LedgerUpdate
{
    /// <summary>Who the new entries are by; empty for nobody.</summary>
    public string Who { get; init; } = string.Empty;

    /// <summary>When that is, UTC.</summary>
    public required DateTime Now { get; init; }

    /// <summary>The parts whose state or note is set.</summary>
    public ISet<Layer> Chosen { get; init; } = new HashSet<Layer>();

    /// <summary>Their state; null leaves it as it is.</summary>
    public PartState? State { get; init; }

    /// <summary>Their note; null leaves it as it is.</summary>
    public string? Note { get; init; }

    /// <summary>Whether entries of parts that are no longer in the file are left out.</summary>
    public bool RemoveMissing { get; init; }

    /// <summary>The time as ledgers keep it: UTC, whole seconds.</summary>
    public static DateTime Clock()
    {
        var now = DateTime.UtcNow;
        return now.AddTicks(-(now.Ticks % TimeSpan.TicksPerSecond));
    }

    /// <summary>
    /// The ledger of now. Entries whose parts are in the file take on path, id, mark and what the part holds; state, note, who and when stay unless a newer mark or this update
    /// says otherwise, so that a second update changes nothing. A part that could be several entries gets none before somebody sets its state, and those entries stay as they are.
    /// </summary>
    public LayerLedger Create(LedgerParts parts, LedgerJoin join, LedgerRules rules)
    {
        var rows = join.Rows.Where(row => row.Evidence != LedgerEvidence.Ambiguous || Chosen.Contains(row.Layer!)).ToList();
        var looks = ReadLooks(parts, rows);
        var entries = rows.Select((row, i) => Create(parts, rules, row, looks[i])).ToList();
        if (!RemoveMissing) entries.AddRange(join.Vanished.Select(row => row.Entry!));
        entries.AddRange(join.Undecided);
        return new LayerLedger(parts.File.Name, parts.ReadVersion(), [.. entries.GroupBy(LedgerKey.Of).Select(group => group.First())]);
    }

    private LedgerEntry Create(LedgerParts parts, LedgerRules rules, LedgerRow row, string look)
    {
        var layer = row.Layer!;
        var mark = LedgerRules.FindMark(layer);
        var state = row.State ?? PartState.Open;
        var saysMark = row.Entry is { } known ? rules.TellNewer(known, mark) is { } newer && newer != known.State : rules.Tell(mark) is not null;
        var isSet = saysMark || Chosen.Contains(layer);
        return new LedgerEntry
        {
            // Names can hold halves of surrogate pairs, which the ledger's UTF-8 cannot.
            LayerPath = WellFormed.Of(layer.LayerPath),
            Id = layer.Id,
            Pixels = parts[layer].Pixels,
            Mask = parts[layer].Mask,
            Painted = parts[layer].Painted,
            Look = look,
            // A file that lost its marks says nothing of them; they are what can be brought back. On a changed part any mark is new from now on.
            Mark = mark == Mark.None && !parts.HasMarks && row.Entry is { } entry && parts.Holds(layer, entry) ? entry.Mark : mark,
            State = Chosen.Contains(layer) ? State ?? state : state,
            Note = (Chosen.Contains(layer) ? Note : null) ?? row.Entry?.Note ?? string.Empty,
            Who = isSet ? Who : row.Entry?.Who ?? string.Empty,
            When = isSet ? Now : row.Entry?.When,
        };
    }

    /// <summary>Looks are costly to make; those of parts that did not change are in their entries.</summary>
    private static IReadOnlyList<string> ReadLooks(LedgerParts parts, IReadOnlyList<LedgerRow> rows)
    {
        var changed = rows.Where(row => row.Entry is null || !parts.Holds(row.Layer!, row.Entry)).Select(row => row.Layer!).ToList();
        var read = parts.ReadLooks(changed).Zip(changed, (look, layer) => (look, layer)).ToDictionary(item => item.layer, item => item.look);
        return [.. rows.Select(row => read.TryGetValue(row.Layer!, out var look) ? look?.ToString() ?? string.Empty : row.Entry!.Look)];
    }
}
