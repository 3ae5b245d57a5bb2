using System.Management.Automation;
using LayerTools.Completion;
using LayerTools.Errors;
using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>A cmdlet that tells how far layers are.</summary>
public abstract class LayerStatusCommand : LayerSelectionCommand, IDisposable
{
    private readonly CancellationTokenSource stopping = new();
    private StatusReader? reader;
    private LedgerStatusReader? ledgerReader;

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

    /// <summary>Joins the layers with the ledgers beside their files.</summary>
    [Parameter]
    public SwitchParameter Ledger { get; set; }

    /// <summary>The ledgers to join with instead, or folders of ledgers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerLedgerCompleter))]
    public string[]? LedgerPath { get; set; }

    /// <summary>The profile that says what marks mean.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <summary>Stops the work that is waited for.</summary>
    private protected CancellationToken Cancellation => stopping.Token;

    /// <summary>Frees what stops the work.</summary>
    public void Dispose()
    {
        stopping.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        try
        {
            var given = MyInvocation.BoundParameters.ContainsKey(nameof(DoneMark)) ? DoneMark : null;
            var options = new StatusOptions
            {
                DoneMarks = new HashSet<Mark>(given ?? Profile?.Marks.Where(mark => mark.Value == MarkMeaning.Done).Select(mark => mark.Key) ?? DoneMark),
                DoneName = DoneName is null ? null : StatusOptions.CreatePattern(DoneName),
            };
            reader = new StatusReader(options);
            ledgerReader = Ledger || LedgerPath is not null ? new LedgerStatusReader(LedgerCommandRules.Create(Profile, given, options)) : null;
        }
        catch (LayeredFileException error)
        {
            ThrowTerminatingError(ErrorRecords.FromCore(error, DoneName));
        }
    }

    /// <summary>Takes the statuses of one file's layers.</summary>
    private protected abstract void Take(IReadOnlyList<LayerStatus> statuses);

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Take(Read(file, Filter.IsEmpty ? null : Filter.Apply(file.Name, file.GetLayers().ToList())));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Take(Read(file, Filter.Apply(file.Name, ofFile))));
    }

    private IReadOnlyList<LayerStatus> Read(LayerFile file, IReadOnlyList<Layer>? layers)
    {
        if (ledgerReader is null) return reader!.Read(file, layers);
        try
        {
            var (statuses, clashes) = ledgerReader.Read(file, layers, LedgerReference.Read(this, LedgerPath, file), stopping.Token);
            LedgerReference.WriteClashes(this, file, clashes);
            return statuses;
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }
}
