using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits;
using LayerTools.Ledgers;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Gives layers back the marks that a ledger keeps of them.</summary>
[Cmdlet(VerbsData.Import, "LayerLedger", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer), typeof(LedgerClash))]
public sealed class ImportLayerLedgerCommand : LayerEditCommand, IDisposable
{
    private readonly CancellationTokenSource stopping = new();

    /// <summary>Ledgers, or folders of ledgers; those beside the layered files if left out.</summary>
    [Parameter(Position = 0)]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerLedgerCompleter))]
    public string[]? LedgerPath { get; set; }

    /// <summary>The profile that says what marks mean.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>Lists what people said differently, and changes nothing.</summary>
    [Parameter]
    public SwitchParameter ListClashes { get; set; }

    /// <inheritdoc/>
    private protected override string Action => "Bring marks back";

    /// <summary>Frees what stops the work.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override LayerEdit CreateEdit(LayerFile file) => Join(file, (parts, join, rules) =>
    {
        LedgerReference.WriteClashes(this, file, join.Clashes);
        WriteWarnings(file.Name, LedgerMarks.Explain(parts, join));
        return new MarkEdit(LedgerMarks.Find(parts, join, rules));
    });

    /// <inheritdoc/>
    private protected override IReadOnlyList<Layer>? Edit(LayerFile file, IReadOnlyList<Layer> layers)
    {
        if (!ListClashes) return base.Edit(file, layers);
        WriteObject(Join(file, (_, join, _) => join.Clashes), enumerateCollection: true);
        return [];
    }

    /// <inheritdoc/>
    private protected override void WriteResult(LayerFile file)
    {
        if (!ListClashes) base.WriteResult(file);
    }

    private T Join<T>(LayerFile file, Func<LedgerParts, LedgerJoin, LedgerRules, T> use)
    {
        var ledgers = LedgerReference.Read(this, LedgerPath, file);
        if (ledgers.Count == 0) throw new RefusedException(ErrorRecords.LedgerNotFound(file));
        var rules = LedgerCommandRules.Create(Profile);
        try
        {
            using var parts = new LedgerParts(file, rules.Options, stopping.Token);
            return use(parts, new LedgerJoin(parts, ledgers, rules), rules);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }
}
