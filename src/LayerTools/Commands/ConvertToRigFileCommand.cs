using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits.Rig;
using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Turns files into plain parts for a rig, and proves that the picture is the same.</summary>
[Cmdlet(VerbsData.ConvertTo, "RigFile", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Medium, DefaultParameterSetName = BakeSet)]
[OutputType(typeof(LayerFile), ParameterSetName = [BakeSet])]
[OutputType(typeof(RigPart), ParameterSetName = [BakeSet])]
[OutputType(typeof(PartIslands), ParameterSetName = [IslandsSet])]
public sealed class ConvertToRigFileCommand : LayerInputCommand, IDisposable
{
    private const string BakeSet = "Bake";
    private const string IslandsSet = "Islands";
    private const double LargestTolerance = 255;
    private readonly CancellationTokenSource stopping = new();

    /// <summary>What becomes of layers that are clipped to a part: merged into it, or cut to its shape.</summary>
    [Parameter(ParameterSetName = BakeSet)]
    public RigClipping Clipping { get; set; } = RigClipping.Merge;

    /// <summary>Names or paths of layers to keep although their names say that they are no parts; wildcards are allowed.</summary>
    [Parameter(ParameterSetName = BakeSet)]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerNameCompleter))]
    public string[]? Keep { get; set; }

    /// <summary>Names or paths of layers to leave out besides; wildcards are allowed.</summary>
    [Parameter(ParameterSetName = BakeSet)]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerNameCompleter))]
    public string[]? Drop { get; set; }

    /// <summary>Leaves out what is hidden.</summary>
    [Parameter(ParameterSetName = BakeSet)]
    public SwitchParameter DropHidden { get; set; }

    /// <summary>The largest difference that is accepted, in steps of 1/255.</summary>
    [Parameter(ParameterSetName = BakeSet)]
    [ValidateRange(0.0, LargestTolerance)]
    public double Tolerance { get; set; } = 2;

    /// <summary>Goes on with a file whose picture differs by more.</summary>
    [Parameter(ParameterSetName = BakeSet)]
    public SwitchParameter AcceptDifference { get; set; }

    /// <summary>Passes on what became of each layer in place of the file.</summary>
    [Parameter(ParameterSetName = BakeSet)]
    public SwitchParameter Report { get; set; }

    /// <summary>Lists parts that are painted in several places, and changes nothing.</summary>
    [Parameter(Mandatory = true, ParameterSetName = IslandsSet)]
    public SwitchParameter Islands { get; set; }

    /// <summary>Pixels up to this opacity, 0 to 254, count as unpainted.</summary>
    [Parameter(ParameterSetName = IslandsSet)]
    [ValidateRange(0, 254)]
    public int Threshold { get; set; }

    /// <summary>Frees what stops the work; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        if (ParameterSetName == IslandsSet) List(file, [.. file.GetLayers()]);
        else Bake(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers))
        {
            Try(file, () =>
            {
                if (ParameterSetName == IslandsSet) List(file, ofFile);
                else Bake(file);
            });
        }
    }

    private void Bake(LayerFile file)
    {
        var edit = new RigEdit
        {
            Clipping = Clipping,
            Keep = ToPredicate(Keep),
            Drop = ToPredicate(Drop),
            DropHidden = DropHidden,
            Tolerance = Tolerance,
            AcceptDifference = AcceptDifference,
            Cancellation = stopping.Token,
        };
        Stoppable(() => new EditRunner(this, "Bake parts").Run(edit, file, []));
        if (edit.Parts.Count > 0) WriteVerbose(FormattableString.Invariant($"{file.Path}: the picture differs by at most {edit.Parts[0].FileDifference}/255, on average {edit.Parts[0].FileMeanDifference}/255"));
        if (Report) WriteObject(edit.Parts, enumerateCollection: true);
        else WriteObject(file);
    }

    private void List(LayerFile file, IReadOnlyList<Layer> layers) => Stoppable(() =>
    {
        foreach (var part in new IslandFinder(Threshold).Find(file, layers, stopping.Token)) WriteObject(part);
    });

    private static void Stoppable(Action work)
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

    private static Func<Layer, bool>? ToPredicate(string[]? texts)
    {
        if (texts is null) return null;
        var patterns = texts.Select(text => new WildcardPattern(text, WildcardOptions.IgnoreCase | WildcardOptions.CultureInvariant)).ToList();
        return layer => patterns.Exists(pattern => pattern.IsMatch(layer.Name) || pattern.IsMatch(layer.LayerPath));
    }
}
