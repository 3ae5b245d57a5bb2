using LayerTools.Measures;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;

namespace LayerTools.Checks;

/// <summary>What rules know about a file; found out once for all of them.</summary>
internal sealed class CheckContext
{
    private readonly NameReader nameReader;
    private readonly Dictionary<Layer, ParsedName> names = [];
    private readonly Lazy<FigureSurvey> survey;
    private readonly Lazy<IReadOnlyList<Layer>> parts;
    private readonly Lazy<IReadOnlyList<PartPair>> pairs;
    private readonly Lazy<double?> figureAxis;
    private readonly StatusOptions status = new();

    public CheckContext(LayerFile file, LayerProfile profile, CancellationToken cancellation)
    {
        File = file;
        Profile = profile;
        Cancellation = cancellation;
        nameReader = new NameReader(profile.Naming);
        Opposites = new Opposites(file);
        survey = new Lazy<FigureSurvey>(() => FigureSurvey.Take(file, cancellation));
        pairs = new Lazy<IReadOnlyList<PartPair>>(() => PartPair.FindAll(Survey, Opposites));
        figureAxis = new Lazy<double?>(() => Checks.FigureAxis.Find(Survey, Pairs, file));
        parts = new Lazy<IReadOnlyList<Layer>>(() => [.. file.GetLayers().Where(layer => !layer.IsGroup && layer.Kind is not (LayerKind.Adjustment or LayerKind.Fill) && RoleOf(layer) == LayerRole.Part)]);
    }

    public LayerFile File { get; }

    public LayerProfile Profile { get; }

    public CancellationToken Cancellation { get; }

    public Opposites Opposites { get; }

    /// <summary>What the pixels of all parts say; unpacked when the first rule asks.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public FigureSurvey Survey => survey.Value;

    /// <summary>The parts of the figure, front to back: what is neither a group nor an adjustment or fill, and by its name and groups neither backdrop, sketch nor guide.</summary>
    public IReadOnlyList<Layer> Parts => parts.Value;

    /// <summary>Parts that are each other's opposite; needs the survey.</summary>
    public IReadOnlyList<PartPair> Pairs => pairs.Value;

    /// <summary>The x of the figure's own centre line, canvas px; null if its parts do not agree on one. Needs the survey.</summary>
    public double? FigureAxis => figureAxis.Value;

    /// <summary>What a layer is for.</summary>
    public LayerRole RoleOf(Layer layer) => status.FindRole(layer);

    /// <summary>A layer's name, taken apart.</summary>
    public ParsedName NameOf(Layer layer)
    {
        if (!names.TryGetValue(layer, out var name)) names.Add(layer, name = nameReader.Read(layer.Name));
        return name;
    }
}
