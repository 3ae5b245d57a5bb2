using LayerTools.Json;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Profiles.Learning;

/// <summary>
/// Which zone lies in front of which. For each two zones the pairs of their parts are counted, file by file, those of a left and a right part aside; a zone that lies in front of more of the others comes
/// first (Copeland's method), and zones that no file shows keep their place behind the one before them.
/// </summary>
internal sealed class StackLesson(LayerProfile basis) : Lesson
{
    private const int MostNamed = 5;

    private readonly NameReader reader = new(basis.Naming);
    private readonly Dictionary<(string Front, string Back), int> pairs = [];
    private readonly HashSet<string> seen = new(StringComparer.Ordinal);
    private int named;
    private int total;

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        var names = parts.Select(part => reader.Read(part.Name)).ToList();
        total += names.Count;
        named += names.Count(name => name.Part is not null);
        var inFront = new Tally<(string Zone, Side Side)>();
        foreach (var (zone, side) in names.Where(name => name.Part is { } part && basis.Stack.Contains(part.Zone)).Select(name => (name.Part!.Zone, name.Side)))
        {
            seen.Add(zone);
            // A left arm does not lie on a right one; which of them comes first tells nothing.
            foreach (var ((front, frontSide), count) in inFront.Counts.Where(item => item.Key.Side == side || item.Key.Side == Side.None || side == Side.None).Select(item => (item.Key, item.Value)))
            {
                if (front != zone) pairs[(front, zone)] = Count(front, zone) + count;
            }

            inFront.Add((zone, side));
        }
    }

    public override LayerProfile Teach(LayerProfile profile, LessonNotes notes)
    {
        if (named < total) notes.NotLearned.Add(FormattableString.Invariant($"Words: {total - named} of {total} parts have names that are in no vocabulary."));
        if (seen.Count < 2)
        {
            notes.NotLearned.Add($"Stack: the names tell of {(seen.Count == 0 ? "no zone" : "one zone only")}, so that the order is as in '{profile.Name}'.");
            return profile;
        }

        // Sorting keeps the order of equals: zones that the files do not tell apart stay as they were.
        var order = profile.Stack.Where(seen.Contains).OrderByDescending(zone => seen.Count(other => Count(zone, other) > Count(other, zone)) - seen.Count(other => Count(zone, other) < Count(other, zone))).ToList();
        notes.Learned.Add(FormattableString.Invariant($"Stack: the order of {seen.Count} zones, {order[0]} to {order[order.Count - 1]}."));
        NoteMixed(order, notes);
        var unseen = profile.Stack.Where(zone => !seen.Contains(zone)).ToList();
        if (unseen.Count > 0) notes.NotLearned.Add($"Stack: no part is in {SchemaWords.List(unseen, "or")}, so that these keep their places from '{profile.Name}'.");
        for (var i = 0; i < profile.Stack.Count; i++)
        {
            if (seen.Contains(profile.Stack[i])) continue;
            order.Insert(i == 0 ? 0 : order.IndexOf(profile.Stack[i - 1]) + 1, profile.Stack[i]);
        }

        return profile with { Stack = order };
    }

    private void NoteMixed(List<string> order, LessonNotes notes)
    {
        var mixed = new List<string>();
        for (var i = 0; i < order.Count; i++)
        {
            for (var j = i + 1; j < order.Count; j++)
            {
                var (front, back) = (Count(order[i], order[j]), Count(order[j], order[i]));
                if (5 * back > front + back) mixed.Add($"{order[i]} with {order[j]}");
            }
        }

        if (mixed.Count > 0) notes.NotLearned.Add($"Stack: these zones lie among each other, so that their order is not clear: {string.Join(", ", mixed.Take(MostNamed))}{(mixed.Count > MostNamed ? FormattableString.Invariant($" and {mixed.Count - MostNamed} pairs more") : string.Empty)}.");
    }

    private int Count(string front, string back) => pairs.TryGetValue((front, back), out var count) ? count : 0;
}
