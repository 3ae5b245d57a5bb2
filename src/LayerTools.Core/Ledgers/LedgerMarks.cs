using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>Finds the marks that a ledger gives back to the parts of its file.</summary>
internal static class LedgerMarks
{
    /// <summary>
    /// The parts that get a mark: those that hold what their entry says and carry no mark that is newer than it. Whether they have another name, place or id now does not matter.
    /// </summary>
    public static IReadOnlyDictionary<Layer, Mark> Find(LedgerParts parts, LedgerJoin join, LedgerRules rules)
    {
        var marks = new Dictionary<Layer, Mark>();
        foreach (var row in join.Rows.Where(row => row.Entry is not null && parts.Holds(row.Layer!, row.Entry)))
        {
            var (now, meant) = (LedgerRules.FindMark(row.Layer!), rules.Choose(row.Entry!));
            if (meant != Mark.None && now != meant && (now == Mark.None || now == row.Entry!.Mark)) marks.Add(row.Layer!, meant);
        }

        return marks;
    }

    /// <summary>What the user should know of parts that got none, as sentences.</summary>
    public static IEnumerable<string> Explain(LedgerParts parts, LedgerJoin join)
    {
        var changed = join.Rows.Where(row => row.Entry is { State: PartState.Done } entry && !parts.Holds(row.Layer!, entry)).Select(row => row.Layer!.LayerPath).ToList();
        if (changed.Count > 0) yield return $"Changed since done, so without a mark from the ledger: {List(changed)}.";
        foreach (var row in join.Rows.Where(row => row.Evidence == LedgerEvidence.Ambiguous)) yield return $"'{row.Layer!.LayerPath}' could be any of the ledger's {List(row.Candidates)}; it was left as it is.";
        if (join.Vanished.Count > 0) yield return $"In the ledger and no longer in the file: {List([.. join.Vanished.Select(row => row.Entry!.LayerPath)])}.";
    }

    private static string List(IReadOnlyList<string> paths)
    {
        const int Most = 5;
        var listed = string.Join(", ", paths.Take(Most).Select(path => $"'{path}'"));
        return paths.Count > Most ? FormattableString.Invariant($"{listed} and {paths.Count - Most} more") : listed;
    }
}
