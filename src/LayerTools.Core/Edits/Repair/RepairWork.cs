using LayerTools.Checks;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Edits.Repair;

/// <summary>What the repairs of one file gather until all of it is applied.</summary>
/// <param name="file">The file.</param>
/// <param name="reader">Unpacks its channels.</param>
internal sealed class RepairWork(LayerFile file, PixelReader reader)
{
    private readonly List<EditStep> steps = [];
    private readonly List<Action> actions = [];
    private readonly List<string> warnings = [];
    private readonly Dictionary<Layer, string> names = [];
    private readonly Lazy<Dictionary<int, Layer>> layers = new(() => file.GetLayers().ToDictionary(layer => layer.LayerNumber));

    public LayerFile File => file;

    public PixelReader Reader => reader;

    /// <summary>Whether any change can be seen, be it as little as alpha 7 of 255.</summary>
    public bool ChangesPicture { get; set; }

    /// <summary>Whether a change of a layer's rectangle was taken.</summary>
    public bool IsCut(Layer layer) => steps.Exists(step => step.Layer == layer && step.Property == nameof(Bounds));

    /// <summary>The layer that a finding is about.</summary>
    public Layer LayerOf(Finding finding) => layers.Value[finding.LayerNumber!.Value];

    /// <summary>Takes a change.</summary>
    /// <param name="step">What a person reads.</param>
    /// <param name="apply">Makes it; must not fail.</param>
    public void Add(EditStep step, Action apply)
    {
        steps.Add(step);
        actions.Add(apply);
    }

    /// <summary>The name that a layer will have.</summary>
    public string NameOf(Layer layer) => names.TryGetValue(layer, out var name) ? name : layer.Name;

    /// <summary>Takes a new name; one for each layer.</summary>
    public void Rename(Layer layer, string name)
    {
        names.Add(layer, name);
        Add(new EditStep(layer, RenameEdit.Property, layer.Name, name), () => layer.Name = name);
    }

    /// <summary>Tells why something found is left as it is, as a sentence; once, however often it is given.</summary>
    public void Leave(string why)
    {
        if (!warnings.Contains(why)) warnings.Add(why);
    }

    public EditPlan ToPlan() => new(file, steps, ChangesPicture, () => actions.ForEach(apply => apply())) { Warnings = warnings };
}
