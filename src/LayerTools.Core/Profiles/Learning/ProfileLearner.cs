using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Profiles.Learning;

/// <summary>Learns a profile from files that are as they should be. Reads names, sizes and marks, no pixels, and keeps no file.</summary>
public sealed class ProfileLearner
{
    private readonly LayerProfile basis;
    private readonly StatusOptions roles = new();
    private readonly List<string> files = [];
    private readonly Lesson[] lessons;

    /// <param name="basis">What holds for all that the files do not show.</param>
    public ProfileLearner(LayerProfile basis)
    {
        this.basis = basis ?? throw new ArgumentNullException(nameof(basis));
        lessons = [new CanvasLesson(), new SideLesson(), new FormLesson(), new NumberLesson(), new StackLesson(basis), new MarkLesson(), new TextureLesson()];
    }

    /// <summary>Looks at a file, with its pending edits.</summary>
    public void Add(LayerFile file)
    {
        if (file is null) throw new ArgumentNullException(nameof(file));
        files.Add(file.Name);
        var parts = file.GetLayers().Where(layer => layer.Kind is not (LayerKind.Group or LayerKind.Adjustment or LayerKind.Fill) && roles.FindRole(layer) == LayerRole.Part).ToList();
        foreach (var lesson in lessons) lesson.Look(file, parts);
    }

    /// <summary>The profile.</summary>
    /// <param name="name">What it is to be called.</param>
    /// <exception cref="InvalidOperationException">No file was added.</exception>
    public LearnedProfile Learn(string name)
    {
        if (files.Count == 0) throw new InvalidOperationException("No file was added.");
        var notes = new LessonNotes();
        var profile = lessons.Aggregate(basis, (profile, lesson) => lesson.Teach(profile, notes));
        notes.NotLearned.Add($"Screens, rules, padding and words of its own: no file shows them, so they are as in '{basis.Name}'.");
        return new LearnedProfile(profile with { Name = name, Description = Describe(), Path = null }, notes.Learned, notes.NotLearned);
    }

    private string Describe()
    {
        const int Most = 5;
        var more = files.Count > Most ? FormattableString.Invariant($" and {files.Count - Most} more") : string.Empty;
        return $"Learned from {string.Join(", ", files.Take(Most))}{more}.";
    }
}
