using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits.Repair;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Puts right what rules find, where that is safe.</summary>
[Cmdlet(VerbsDiagnostic.Repair, "LayerFile", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class RepairLayerFileCommand : LayerInputCommand, IDisposable
{
    private readonly CancellationTokenSource stopping = new();
    private EditRunner? runner;
    private RepairEdit? edit;

    /// <summary>What the files have to be like: a profile, the name of a shipped one, or the path of its file.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>The rules whose findings are put right; wildcards are allowed.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(RuleCompleter))]
    public string[]? Rule { get; set; }

    /// <summary>The rules to leave out; wildcards are allowed.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(RuleCompleter))]
    public string[]? ExcludeRule { get; set; }

    /// <summary>Frees what stops the repairs; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        try
        {
            var choice = new RuleChoice(RepairEdit.Repairable, Rule, ExcludeRule);
            edit = new RepairEdit { Profile = choice.Adjust(Profile ?? LayerProfiles.Default), Rules = choice.Rules, Cancellation = stopping.Token };
            runner = new EditRunner(this, "Repair");
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
        }
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        Run(file, []);
        WriteObject(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers) => runner!.RunAll(layers, Run);

    private IReadOnlyList<Layer>? Run(LayerFile file, IReadOnlyList<Layer> layers)
    {
        try
        {
            return runner!.Run(edit!, file, layers);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }
}
