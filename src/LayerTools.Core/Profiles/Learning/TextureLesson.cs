using LayerTools.Model;

namespace LayerTools.Profiles.Learning;

/// <summary>The smallest page that takes the largest part.</summary>
internal sealed class TextureLesson : Lesson
{
    private const int Smallest = 1024;
    private const int Largest = 16_384;

    private int longestSide;
    private string longestName = string.Empty;

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        var canvas = new Bounds(0, 0, file.Width, file.Height);
        foreach (var part in parts)
        {
            // What lies outside the canvas is cut off before a texture is made.
            var seen = part.Bounds.Intersect(canvas);
            if (Math.Max(seen.Width, seen.Height) <= longestSide) continue;
            (longestSide, longestName) = (Math.Max(seen.Width, seen.Height), part.Name);
        }
    }

    public override LayerProfile Teach(LayerProfile profile, LessonNotes notes)
    {
        var needed = longestSide + (2 * profile.Textures.Padding);
        if (longestSide == 0 || needed > Largest)
        {
            notes.NotLearned.Add(longestSide == 0 ? $"Textures: no part has pixels, so that the page is as in '{profile.Name}'."
                : FormattableString.Invariant($"Textures: '{longestName}' has {longestSide} px and goes on no page; the page is as in '{profile.Name}'."));
            return profile;
        }

        var size = Smallest;
        while (size < needed) size *= 2;
        notes.Learned.Add(FormattableString.Invariant($"Textures: pages of {size} px, the smallest that takes the largest part, '{longestName}' with {longestSide} px."));
        return profile with { Textures = profile.Textures with { PageSize = size } };
    }
}
