using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Sheets.Parts;

/// <summary>Puts cells in order.</summary>
internal static class SubjectOrder
{
    public static IReadOnlyList<SheetSubject> Arrange(IReadOnlyList<SheetSubject> subjects, SheetArrangement arrangement) => arrangement switch
    {
        SheetArrangement.Pairs => Pair(subjects),
        SheetArrangement.Status => [.. subjects.OrderBy(subject => subject.Progress)],
        SheetArrangement.Size => [.. subjects.OrderByDescending(subject => subject.Bounds.Area)],
        _ => subjects,
    };

    /// <summary>Left and right by turns, then what has no side. An opposite that is in the file but was not chosen is no gap: its partner then stands among those without a side.</summary>
    private static List<SheetSubject> Pair(IReadOnlyList<SheetSubject> subjects)
    {
        var (pairs, single) = (new List<SheetSubject>(), new List<SheetSubject>());
        var opposites = new Dictionary<LayerFile, Opposites>();
        var byLayer = subjects.Where(subject => subject.Layer is not null).ToDictionary(subject => subject.Layer!);
        var placed = new HashSet<Layer>();
        foreach (var subject in subjects)
        {
            if (subject.Layer is not { } layer || Opposites.SideOf(layer) is Side.None)
            {
                single.Add(subject);
                continue;
            }

            if (placed.Contains(layer)) continue;
            if (!opposites.TryGetValue(subject.File, out var ofFile)) opposites.Add(subject.File, ofFile = new Opposites(subject.File));
            var isLeft = Opposites.SideOf(layer) == Side.Left;
            var across = ofFile.FindAcross(layer);
            var isOther = across is not null && byLayer.ContainsKey(across) && !placed.Contains(across);
            if (across is not null && !isOther)
            {
                single.Add(subject);
                continue;
            }

            var other = isOther ? byLayer[across!] : SheetSubject.ForMissing(layer, isLeft ? Side.Right : Side.Left);
            placed.Add(layer);
            if (isOther) placed.Add(across!);
            pairs.AddRange(isLeft ? [subject, other] : [other, subject]);
        }

        return [.. pairs, .. single];
    }
}
