using System.Globalization;
using LayerTools.Model;

namespace LayerTools.Profiles.Learning;

/// <summary>Size and resolution: what all files share.</summary>
internal sealed class CanvasLesson : Lesson
{
    private readonly HashSet<int> widths = [];
    private readonly HashSet<int> heights = [];
    private readonly HashSet<double> resolutions = [];
    private bool lacksResolution;

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        widths.Add(file.Width);
        heights.Add(file.Height);
        if (file.Ppi is { } ppi and >= 1 and <= 32_767) resolutions.Add(ppi);
        else lacksResolution = true;
    }

    public override LayerProfile Teach(LayerProfile profile, LessonNotes notes)
    {
        var ppi = lacksResolution || resolutions.Count > 1 ? null : (double?)resolutions.Single();
        var canvas = new CanvasProfile { Width = Only(widths), Height = Only(heights), Ppi = ppi, EvenWidth = widths.All(width => width % 2 == 0) };
        Note("width", "px", canvas.Width, notes);
        Note("height", "px", canvas.Height, notes);
        Note("resolution", "ppi", canvas.Ppi, notes);
        if (!canvas.EvenWidth) notes.Learned.Add("Canvas: odd widths are used, so that none is asked to be even.");
        return profile with { Canvas = canvas };
    }

    private static int? Only(HashSet<int> values) => values.Count == 1 ? values.First() : null;

    private static void Note(string what, string unit, double? value, LessonNotes notes)
    {
        if (value is { } known) notes.Learned.Add($"Canvas: {what} {known.ToString("0.##", CultureInfo.InvariantCulture)} {unit}.");
        else notes.NotLearned.Add($"Canvas: the {what} is not one and the same in all files, so that any is allowed.");
    }
}
