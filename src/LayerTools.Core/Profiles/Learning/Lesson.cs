using LayerTools.Model;

namespace LayerTools.Profiles.Learning;

/// <summary>One thing that files can show of how their studio works.</summary>
internal abstract class Lesson
{
    /// <summary>Looks at a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="parts">Its parts, front to back.</param>
    public abstract void Look(LayerFile file, IReadOnlyList<Layer> parts);

    /// <summary>The profile with what was seen in it.</summary>
    public abstract LayerProfile Teach(LayerProfile profile, LessonNotes notes);
}
