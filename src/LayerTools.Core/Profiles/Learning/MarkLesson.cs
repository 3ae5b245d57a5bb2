using LayerTools.Json;
using LayerTools.Model;

namespace LayerTools.Profiles.Learning;

/// <summary>Which marks are in use. In a file that is as it should be, the mark that most parts carry means finished; what others mean no file says.</summary>
internal sealed class MarkLesson : Lesson
{
    private readonly Tally<Mark> marks = new();

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        foreach (var part in parts) marks.Add(part.Mark is >= Mark.None and <= Mark.Gray ? part.Mark : Mark.None);
    }

    public override LayerProfile Teach(LayerProfile profile, LessonNotes notes)
    {
        var meanings = profile.Marks.ToDictionary(item => item.Key, item => item.Value);
        var used = marks.Counts.Where(item => item.Key != Mark.None).OrderBy(item => item.Key).ToList();
        if (used.Count == 0) notes.NotLearned.Add($"Marks: no part carries one, so that they are as in '{profile.Name}'.");
        foreach (var (mark, count) in used.Select(item => (item.Key, item.Value)))
        {
            if (2 * count > marks.Total)
            {
                foreach (var other in meanings.Where(item => item.Value == MarkMeaning.Done).Select(item => item.Key).ToList()) meanings.Remove(other);
                meanings[mark] = MarkMeaning.Done;
                notes.Learned.Add(FormattableString.Invariant($"Marks: {JsonWords.Of(mark)} means finished, as on {count} of {marks.Total} parts."));
            }
            else if (meanings.TryGetValue(mark, out var meaning))
            {
                notes.NotLearned.Add(FormattableString.Invariant($"Marks: {JsonWords.Of(mark)} is on {count} of {marks.Total} parts and means '{JsonWords.Of(meaning)}' as in '{profile.Name}'."));
            }
            else
            {
                notes.NotLearned.Add(FormattableString.Invariant($"Marks: {JsonWords.Of(mark)} is on {count} of {marks.Total} parts, and what it means is not known; it is left out."));
            }
        }

        return profile with { Marks = meanings };
    }
}
