using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Sets in ledgers how far parts are.</summary>
[Cmdlet(VerbsCommon.Set, "LayerStatus", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class SetLayerStatusCommand : LayerSelectionCommand, IDisposable
{
    private readonly CancellationTokenSource stopping = new();

    /// <summary>How far the parts are.</summary>
    [Parameter(Position = 0)]
    [ValidateSet(nameof(PartState.Done), nameof(PartState.Recheck), nameof(PartState.Open))]
    public PartState? State { get; set; }

    /// <summary>What to note of the parts; an empty text takes a note away.</summary>
    [Parameter(Position = 1)]
    [ValidateLength(0, 10000)]
    [AllowEmptyString]
    public string? Note { get; set; }

    /// <summary>Who says so.</summary>
    [Parameter]
    [ValidateLength(0, 200)]
    public string Who { get; set; } = string.Empty;

    /// <summary>The ledger, or the folder of ledgers; beside the layered files if left out.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(LayerLedgerCompleter))]
    public string? LedgerPath { get; set; }

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <summary>The profile that says what marks mean.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <summary>Frees what stops the work.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        if (State is null && !MyInvocation.BoundParameters.ContainsKey(nameof(Note))) ThrowTerminatingError(ErrorRecords.BadArgument("NothingToSet", "Say what to set: -State or -Note."));
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        SetStates(file, Filter.Apply(file.Name, file.GetLayers().ToList()));
        WriteObject(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        var done = new HashSet<LayerFile>();
        foreach (var (file, ofFile) in LayersByFile.Group(layers))
        {
            if (Try(file, () => SetStates(file, Filter.Apply(file.Name, ofFile)))) done.Add(file);
        }

        WriteObject(layers.Where(layer => done.Contains(layer.GetFile()!)), enumerateCollection: true);
    }

    private void SetStates(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var path = LedgerReference.Locate(this, LedgerPath, file);
        var rules = LedgerCommandRules.Create(Profile);
        var chosen = LedgerParts.Find(file, rules.Options);
        chosen.IntersectWith(layers.SelectMany(layer => new[] { layer }.Concat(layer.GetLayers())));
        if (chosen.Count == 0)
        {
            WriteWarnings(file.Name, ["None of the layers is a part that has a state."]);
            return;
        }

        var what = State is { } state ? Views.Describe(state) : "noted";
        var names = string.Join(", ", file.GetLayers().Where(chosen.Contains).Take(5).Select(layer => $"'{layer.LayerPath}'")) + (chosen.Count > 5 ? FormattableString.Invariant($" and {chosen.Count - 5} more") : string.Empty);
        var writer = new LedgerWriter(this, rules, stopping.Token);
        writer.Write(file, path, LedgerReference.ReadExisting(this, [path], file), $"Set {Names.PrintableText.Of(names)} of {file.Path} to {what}",
            _ => new LedgerUpdate { Now = LedgerUpdate.Clock(), Who = Who, Chosen = chosen, State = State, Note = Note });
    }
}
