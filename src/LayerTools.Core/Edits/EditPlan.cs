using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>What an edit would do to one file.</summary>
public sealed class EditPlan
{
    private readonly Action apply;
    private bool applied;

    /// <param name="file">The file the plan is for.</param>
    /// <param name="steps">What changes, in the order a person would read it.</param>
    /// <param name="changesPicture">Whether the file looks different afterwards.</param>
    /// <param name="apply">Makes the changes; must not fail half way.</param>
    internal EditPlan(LayerFile file, IReadOnlyList<EditStep> steps, bool changesPicture, Action apply)
    {
        File = file;
        Steps = steps;
        ChangesPicture = changesPicture;
        this.apply = apply;
    }

    /// <summary>The file the plan is for.</summary>
    public LayerFile File { get; }

    /// <summary>What changes; empty if the file already is as asked.</summary>
    public IReadOnlyList<EditStep> Steps { get; }

    /// <summary>Whether the file looks different afterwards.</summary>
    public bool ChangesPicture { get; }

    /// <summary>What the user should know, as sentences.</summary>
    public IReadOnlyList<string> Warnings { get; internal set; } = [];

    /// <summary>The layers to pass on instead of the selection, where an edit makes new ones.</summary>
    public IReadOnlyList<Layer>? Results { get; internal set; }

    /// <summary>Makes the changes and records them in the file's change list.</summary>
    public void Apply()
    {
        if (applied) throw new InvalidOperationException("A plan can be applied once.");
        applied = true;
        if (Steps.Count == 0) return;
        var places = Steps.Select(step => (Number: step.Layer?.LayerNumber ?? 0, step.Layer?.Id, Path: step.LayerPath)).ToList();
        apply();
        File.Renumber();
        for (var i = 0; i < Steps.Count; i++)
        {
            var (step, place) = (Steps[i], places[i]);
            // A layer that is new with this plan has its place only now.
            if (place.Number == 0 && step.Layer is { } added) place = (added.LayerNumber, added.Id, added.LayerPath);
            File.Record(new Change(place.Number, place.Id, place.Path, step.Property, step.Old, step.New));
        }

        File.IsPictureStale |= ChangesPicture;
    }
}
