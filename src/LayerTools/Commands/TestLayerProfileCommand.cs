using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Checks;
using LayerTools.Completion;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Tells what is wrong with profiles.</summary>
[Cmdlet(VerbsDiagnostic.Test, "LayerProfile")]
[OutputType(typeof(ProfileFinding), typeof(bool))]
public sealed class TestLayerProfileCommand : LayerToolsCommand
{
    /// <summary>Paths of profiles' files, files, or names of shipped profiles; wildcards are allowed.</summary>
    [Parameter(Mandatory = true, Position = 0, ValueFromPipeline = true)]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public object[] Profile { get; set; } = [];

    /// <summary>Gives true or false for each profile in place of the findings.</summary>
    [Parameter]
    public SwitchParameter Quiet { get; set; }

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        foreach (var value in Profile) Attempt(value, () =>
        {
            foreach (var reference in ProfileReference.FindAll(this, value)) Attempt(reference.Path, () => Check(reference));
        });
    }

    private void Check(ProfileReference reference)
    {
        var findings = reference.Check();
        if (Quiet) WriteObject(findings.All(finding => finding.Severity != Severity.Error));
        else WriteObject(findings, enumerateCollection: true);
    }

    /// <summary>What could not be read is not known to be good.</summary>
    private void Attempt(object? target, Action work)
    {
        if (!Try(target, work) && Quiet) WriteObject(false);
    }
}
