using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Ledgers;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Writes ledgers, which keep how far parts are, or brings them up to date.</summary>
[Cmdlet(VerbsData.Export, "LayerLedger", SupportsShouldProcess = true)]
[OutputType(typeof(FileInfo))]
public sealed class ExportLayerLedgerCommand : LayerInputCommand, IDisposable
{
    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();

    /// <summary>The ledger to write, or the folder to write ledgers to; beside the layered files if left out.</summary>
    [Parameter(Position = 0)]
    [ValidateNotNullOrEmpty]
    public string? Destination { get; set; }

    /// <summary>Ledgers, or folders of ledgers, whose states and notes are taken over besides those of the ledger that is there.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerLedgerCompleter))]
    public string[]? LedgerPath { get; set; }

    /// <summary>Who says what the marks say that are new.</summary>
    [Parameter]
    [ValidateLength(0, 200)]
    public string Who { get; set; } = string.Empty;

    /// <summary>The profile that says what marks mean.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>Leaves out the parts that are no longer in the file.</summary>
    [Parameter]
    public SwitchParameter RemoveMissing { get; set; }

    /// <summary>Frees what stops the work.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        var path = LedgerReference.Locate(this, Destination, file);
        places.Claim(path, file);
        var known = LedgerReference.ReadExisting(this, [File.Exists(path) ? path : LayerLedger.FindPath(file.Path)], file);
        var others = LedgerPath is null ? [] : LedgerReference.Read(this, LedgerPath, file);
        var writer = new LedgerWriter(this, LedgerCommandRules.Create(Profile), stopping.Token);
        if (writer.Write(file, path, [.. known, .. others], $"Write the ledger of {file.Path}", _ => new LedgerUpdate { Now = LedgerUpdate.Clock(), Who = Who, RemoveMissing = RemoveMissing })) WriteFile(path);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, _) in LayersByFile.Group(layers)) Try(file, () => ProcessFile(file));
    }
}
