using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Checks;
using LayerTools.Checks.Sarif;
using LayerTools.Completion;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Checks layered files against the rules of a profile.</summary>
[Cmdlet(VerbsDiagnostic.Test, "LayerFile", SupportsShouldProcess = true, DefaultParameterSetName = ParameterSets.Path)]
[OutputType(typeof(Finding), typeof(FindingSummary), typeof(bool), typeof(FileInfo))]
public sealed class TestLayerFileCommand : LayerFilePathCommand, IDisposable
{
    private readonly CancellationTokenSource stopping = new();
    private IReadOnlyList<CheckRule> rules = [];
    private LayerProfile profile = LayerProfiles.Default;
    private SarifLog? log;
    private string logPath = string.Empty;

    /// <summary>Layered files that were read before, with their pending edits.</summary>
    [Parameter(Mandatory = true, ValueFromPipeline = true, ParameterSetName = ParameterSets.File)]
    [ValidateNotNullOrEmpty]
    public LayerFile[] InputObject { get; set; } = [];

    /// <summary>What the files have to be like: a profile, the name of a shipped one, or the path of its file.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>The rules to ask; wildcards are allowed.</summary>
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

    /// <summary>The least severity that counts.</summary>
    [Parameter]
    [ValidateSet(nameof(Checks.Severity.Note), nameof(Checks.Severity.Warning), nameof(Checks.Severity.Error))]
    public Severity? Severity { get; set; }

    /// <summary>Gives true or false for each file in place of the findings.</summary>
    [Parameter]
    public SwitchParameter Quiet { get; set; }

    /// <summary>Gives one line for each rule and file in place of the findings.</summary>
    [Parameter]
    public SwitchParameter Summary { get; set; }

    /// <summary>The file to write all findings to, as SARIF 2.1.0.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string? AsSarif { get; set; }

    /// <summary>Overwrites the SARIF file if it exists.</summary>
    [Parameter]
    public SwitchParameter Force { get; set; }

    private Severity Least => Severity ?? (Quiet ? Checks.Severity.Warning : Checks.Severity.Note);

    /// <summary>Frees what stops the checks; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        base.BeginProcessing();
        try
        {
            if (Quiet && Summary) throw new RefusedException(ErrorRecords.BadArgument("QuietSummary", "-Quiet gives a bool and -Summary a table. Leave one of them out."));
            var choice = new RuleChoice(CheckRules.All, Rule, ExcludeRule);
            (rules, profile) = (choice.Rules, choice.Adjust(Profile ?? LayerProfiles.Default));
            if (AsSarif is not null) OpenLog(AsSarif);
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
        }
    }

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        if (ParameterSetName == ParameterSets.File)
        {
            foreach (var file in InputObject) Try(file, () => Process(file));
        }
        else
        {
            base.ProcessRecord();
        }
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        base.EndProcessing();
        if (log is null || !ShouldProcess(logPath, "Write findings")) return;
        Try(logPath, () =>
        {
            log.Write(logPath, Force);
            if (!Quiet && !Summary) WriteFile(logPath);
        });
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void Process(LayerFile file)
    {
        var findings = Check(file);
        log?.Add(file.Path, findings);
        if (Quiet) WriteObject(findings.Count == 0);
        else if (Summary) WriteObject(FindingSummary.Of(findings, profile), enumerateCollection: true);
        else if (log is null) WriteObject(findings, enumerateCollection: true);
    }

    /// <inheritdoc/>
    private protected override void WriteFailure(object? target, ErrorRecord record)
    {
        log?.AddFailure(target is LayerFile file ? file.Path : target as string, record.Exception.Message);
        WriteError(record);
        // A file that could not be checked is not known to be good.
        if (Quiet && !ReferenceEquals(target, logPath)) WriteObject(false);
    }

    private List<Finding> Check(LayerFile file)
    {
        try
        {
            return [.. LayerFileChecker.Check(file, profile, rules, stopping.Token).Where(finding => finding.Severity >= Least)];
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }

    private void OpenLog(string path)
    {
        logPath = PathResolver.ResolveLiteral(this, path);
        // Said before the work begins, not after it.
        if (!Force && File.Exists(logPath)) throw new RefusedException(ErrorRecords.DestinationExists(logPath));
        var version = typeof(SarifLog).Assembly.GetName().Version!.ToString(3);
        log = new SarifLog(rules, profile, version, SessionState.Path.CurrentFileSystemLocation.ProviderPath);
    }
}
