using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Profiles.Learning;

/// <summary>
/// Which zone lies in front of which. For each two zones the pairs of their parts are counted, file by file; a zone that lies in front of more of the others comes
/// first (Copeland's method), and zones that no file shows keep their place behind the one before them.
/// </summary>
internal sealed class StackLesson(LayerProfile basis) : Lesson
{
    private readonly NameReader reader = new(basis.Naming);
    private readonly Dictionary<(string Front, string Back), int> pairs = [];
    private readonly HashSet<string> seen = new(StringComparer.Ordinal);
    private int named;
    private int total;

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        var zones = parts.Select(part => reader.Read(part.Name).Part?.Zone).ToList();
        total += zones.Count;
        named += zones.Count(zone => zone is not null);
        var inFront = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var zone in zones.OfType<string>().Where(basis.Stack.Contains))
        {
            seen.Add(zone);
            foreach (var front in inFront.Where(front => front.Key != zone)) pairs[(front.Key, zone)] = Count(front.Key, zone) + front.Value;
            inFront[zone] = (inFront.TryGetValue(zone, out var count) ? count : 0) + 1;
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
        for (var i = 0; i < order.Count; i++)
        {
            for (var j = i + 1; j < order.Count; j++)
            {
                var (front, back) = (Count(order[i], order[j]), Count(order[j], order[i]));
                if (5 * back > front + back) notes.NotLearned.Add($"Stack: {order[i]} and {order[j]} lie among each other.");
            }
        }
    }

    private int Count(string front, string back) => pairs.TryGetValue((front, back), out var count) ? count : 0;
}
