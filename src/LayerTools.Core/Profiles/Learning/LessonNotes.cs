namespace LayerTools.Profiles.Learning;

/// <summary>What was learned, and what was not.</summary>
internal sealed class LessonNotes
{
    public List<string> Learned { get; } = [];

    public List<string> NotLearned { get; } = [];
}
