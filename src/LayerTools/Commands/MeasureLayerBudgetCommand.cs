using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Measures.Budget;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Packs the parts of files into pages of textures and tells what they need.</summary>
[Cmdlet(VerbsDiagnostic.Measure, "LayerBudget", SupportsShouldProcess = true, DefaultParameterSetName = FactsSet)]
[OutputType(typeof(TextureBudget), typeof(TexturePage), typeof(TexturePart), ParameterSetName = [FactsSet])]
[OutputType(typeof(FileInfo), ParameterSetName = [PictureSet])]
public sealed class MeasureLayerBudgetCommand : LayerSelectionCommand, IDisposable
{
    private const string FactsSet = "Facts";
    private const string PictureSet = "Picture";

    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();
    private TextureProfile textures = new();

    /// <summary>What one record is about.</summary>
    [Parameter(Position = 0, ParameterSetName = FactsSet)]
    public BudgetGrouping By { get; set; }

    /// <summary>Most parts of a file to tell of, the most costly first; means -By Part.</summary>
    [Parameter(ParameterSetName = FactsSet)]
    [ValidateRange(1, int.MaxValue)]
    public int? Top { get; set; }

    /// <summary>The PNG to write, or the folder to write one to for each file.</summary>
    [Parameter(Mandatory = true, ParameterSetName = PictureSet)]
    [ValidateNotNullOrEmpty]
    public string Picture { get; set; } = string.Empty;

    /// <summary>Overwrites pictures that exist.</summary>
    [Parameter(ParameterSetName = PictureSet)]
    public SwitchParameter Force { get; set; }

    /// <summary>Columns and rows of a page, px.</summary>
    [Parameter]
    [ValidateSet("1024", "2048", "4096", "8192", "16384")]
    public int? PageSize { get; set; }

    /// <summary>Free pixels around each part.</summary>
    [Parameter]
    [ValidateRange(0, 256)]
    public int? Padding { get; set; }

    /// <summary>Whether parts may be turned by 90°.</summary>
    [Parameter]
    public SwitchParameter Turn { get; set; }

    /// <summary>The profile that says what is not given here.</summary>
    [Parameter]
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
        var profile = (Profile ?? LayerProfiles.Default).Textures;
        textures = profile with
        {
            PageSize = PageSize ?? profile.PageSize,
            Padding = Padding ?? profile.Padding,
            Turn = MyInvocation.BoundParameters.ContainsKey(nameof(Turn)) ? Turn : profile.Turn,
        };
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Measure(file, Filter.IsEmpty ? null : Filter.Apply(file.Name, file.GetLayers().ToList()));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Measure(file, Filter.Apply(file.Name, ofFile)));
    }

    private void Measure(LayerFile file, IReadOnlyList<Layer>? layers)
    {
        try
        {
            if (ParameterSetName == PictureSet)
            {
                WritePictures(file, layers);
                return;
            }

            var pages = TexturePages.Pack(file, layers, textures, stopping.Token);
            if (By == BudgetGrouping.Part || Top is not null) WriteObject(pages.ByCost().Take(Top ?? int.MaxValue), enumerateCollection: true);
            else if (By == BudgetGrouping.Page) WriteObject(pages.List(), enumerateCollection: true);
            else WriteObject(pages.Sum());
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }

    private void WritePictures(LayerFile file, IReadOnlyList<Layer>? layers)
    {
        var path = SavePlaces.LocatePng(PathResolver.ResolveLiteral(this, Picture), file);
        places.Claim(path, file);
        if (!ShouldProcess(path, $"Write pictures of the texture pages of {file.Path}")) return;
        foreach (var written in TexturePictures.Write(TexturePages.Pack(file, layers, textures, stopping.Token), path, Force, stopping.Token)) WriteFile(written);
    }
}
