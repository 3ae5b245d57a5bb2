using System.Management.Automation;
using LayerTools.Errors;
using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>A cmdlet that tells how far layers are.</summary>
public abstract class LayerStatusCommand : LayerSelectionCommand
{
    private StatusReader? reader;

    private protected LayerStatusCommand()
    {
    }

    /// <summary>The colour marks of the layers to look at.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <summary>The marks that mean finished.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[] DoneMark { get; set; } = [Model.Mark.Green];

    /// <summary>A regular expression for names that mean finished, for files whose marks were lost.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string? DoneName { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        try
        {
            reader = new StatusReader(new StatusOptions
            {
                DoneMarks = new HashSet<Mark>(DoneMark),
                DoneName = DoneName is null ? null : StatusOptions.CreatePattern(DoneName),
            });
        }
        catch (LayeredFileException error)
        {
            ThrowTerminatingError(ErrorRecords.FromCore(error, DoneName));
        }
    }

    /// <summary>Takes the statuses of one file's layers.</summary>
    private protected abstract void Take(IReadOnlyList<LayerStatus> statuses);

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) =>
        Take(reader!.Read(file, Filter.IsEmpty ? null : Filter.Apply(file.Name, file.GetLayers().ToList())));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Take(reader!.Read(file, Filter.Apply(file.Name, ofFile))));
    }
}
