using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Measures.Detail;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Tells how much detail figures have on screens, what larger ones would cost, and which parts were enlarged.</summary>
[Cmdlet(VerbsDiagnostic.Measure, "LayerDetail", SupportsShouldProcess = true, DefaultParameterSetName = FactsSet)]
[OutputType(typeof(FramingDetail), ParameterSetName = [FactsSet])]
[OutputType(typeof(PartEnlargement), ParameterSetName = [EnlargedSet])]
[OutputType(typeof(FileInfo), ParameterSetName = [PictureSet])]
public sealed class MeasureLayerDetailCommand : LayerSelectionCommand, IDisposable
{
    private const string FactsSet = "Facts";
    private const string EnlargedSet = "Enlarged";
    private const string PictureSet = "Picture";

    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();
    private LayerProfile profile = LayerProfiles.Default;
    private IReadOnlyList<ScreenSize> screens = [];

    /// <summary>What the camera looks at, where no layers are chosen.</summary>
    [Parameter(Position = 0, ParameterSetName = FactsSet)]
    [Parameter(ParameterSetName = PictureSet)]
    [ValidateNotNullOrEmpty]
    [ValidateSet("Figure", "Bust", "Face")]
    public FramingKind[] Framing { get; set; } = [FramingKind.Figure, FramingKind.Bust, FramingKind.Face];

    /// <summary>Screens of the profile by name, or sizes such as 1920x1080.</summary>
    [Parameter(ParameterSetName = FactsSet)]
    [Parameter(ParameterSetName = PictureSet)]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(ScreenCompleter))]
    public string[]? Screen { get; set; }

    /// <summary>Looks for parts that were enlarged after they were drawn.</summary>
    [Parameter(Mandatory = true, ParameterSetName = EnlargedSet)]
    public SwitchParameter Enlarged { get; set; }

    /// <summary>The PNG to write, or the folder to write one to for each framing and screen.</summary>
    [Parameter(Mandatory = true, ParameterSetName = PictureSet)]
    [ValidateNotNullOrEmpty]
    public string Picture { get; set; } = string.Empty;

    /// <summary>Overwrites pictures that exist.</summary>
    [Parameter(ParameterSetName = PictureSet)]
    public SwitchParameter Force { get; set; }

    /// <summary>The profile whose words and screens hold.</summary>
    [Parameter(ParameterSetName = FactsSet)]
    [Parameter(ParameterSetName = PictureSet)]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <summary>Frees what stops the work; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        profile = Profile ?? LayerProfiles.Default;
        if (!Filter.IsEmpty && IsFramingGiven) ThrowTerminatingError(FramingOrLayers());
        try
        {
            screens = ScreenReference.FindAll(Screen, profile);
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
        }
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Guard(() => Measure(file, Filter.IsEmpty ? null : Filter.Apply(file.Name, file.GetLayers().ToList())));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        if (IsFramingGiven) ThrowTerminatingError(FramingOrLayers());
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Guard(() => Measure(file, Filter.Apply(file.Name, ofFile))));
    }

    private static void Guard(Action work)
    {
        try
        {
            work();
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }

    private static ErrorRecord FramingOrLayers() =>
        ErrorRecords.BadArgument("FramingOrLayers", "-Framing looks at the whole figure, layers are looked at one by one. Leave -Framing out, or pipe files and choose no layers.");

    private bool IsFramingGiven => MyInvocation.BoundParameters.ContainsKey(nameof(Framing));

    private void Measure(LayerFile file, IReadOnlyList<Layer>? layers)
    {
        var reader = new DetailReader(profile, screens);
        switch (ParameterSetName)
        {
            case EnlargedSet:
                foreach (var part in DetailReader.FindEnlarged(file, layers, stopping.Token)) WriteObject(part);
                break;
            case PictureSet when layers is null:
                foreach (var framing in Framing) WritePictures(file, framing, null, framing.ToString().ToLowerInvariant());
                break;
            case PictureSet:
                foreach (var layer in layers!) WritePictures(file, FramingKind.Part, layer, FileNames.MakeSafe(layer.Name));
                break;
            default:
                WriteObject(layers is null
                    ? reader.Read(file, Framing, warning => WriteWarnings(file.Name, [warning]), stopping.Token)
                    : reader.Read(file, layers, stopping.Token), enumerateCollection: true);
                break;
        }
    }

    /// <summary>One picture for each screen; trouble with one of them, such as a face that is not there, lets the others be written.</summary>
    private void WritePictures(LayerFile file, FramingKind framing, Layer? layer, string name)
    {
        foreach (var screen in screens)
        {
            Try(file, () => Guard(() =>
            {
                var path = Locate(file, FormattableString.Invariant($"{name}-{screen.Width}x{screen.Height}"));
                places.Claim(path, file);
                if (!ShouldProcess(path, $"Write what a screen shows of {layer?.LayerPath ?? file.Path}")) return;
                WriteFile(ScreenPicture.Write(file, framing, layer, profile, screen, path, Force, stopping.Token));
            }));
        }
    }

    private string Locate(LayerFile file, string ending)
    {
        var destination = PathResolver.ResolveLiteral(this, Picture);
        var path = SavePlaces.LocatePng(destination, file);
        var isFolder = Path.GetExtension(destination).Length == 0 || Directory.Exists(destination);
        return isFolder ? Path.Combine(Path.GetDirectoryName(path)!, $"{Path.GetFileNameWithoutExtension(path)}-{ending}.png") : path;
    }
}
