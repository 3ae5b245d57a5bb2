using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Sheets.Reports;

namespace LayerTools.Commands;

/// <summary>Writes one page that tells of any number of files: how far they are, what is wrong with them, what their layers look like.</summary>
[Cmdlet(VerbsData.Export, "LayerReport", SupportsShouldProcess = true)]
[OutputType(typeof(FileInfo))]
public sealed class ExportLayerReportCommand : LayerInputCommand, IDisposable
{
    private readonly CancellationTokenSource stopping = new();
    private ThrottledProgress? progress;
    private WatchedWork? watched;
    private LayerReport? report;
    private DeliveryFiles? deliveries;
    private string destination = string.Empty;

    /// <summary>The page to write; ends in .html.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNullOrEmpty]
    public string Path { get; set; } = string.Empty;

    /// <summary>The heading of the page.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string Title { get; set; } = new ReportOptions().Title;

    /// <summary>What the files have to be like: a profile, the name of a shipped one, or the path of its file.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>What is measured beside status and findings.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public ReportMeasure[] Measure { get; set; } = [];

    /// <summary>The delivery before: a layered file, its path, or a folder of files that go by their names. The report then tells what changed.</summary>
    [Parameter]
    [ValidateNotNull]
    public object? Reference { get; set; }

    /// <summary>Tells what to do about each finding; the commands hold full paths of this machine.</summary>
    [Parameter]
    public SwitchParameter IncludeRemedy { get; set; }

    /// <summary>The marks that mean finished.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[] DoneMark { get; set; } = [Mark.Green];

    /// <summary>A regular expression for names that mean finished, for files whose marks were lost.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string? DoneName { get; set; }

    /// <summary>Overwrites a page that exists.</summary>
    [Parameter]
    public SwitchParameter Force { get; set; }

    /// <summary>Gives up what was not written.</summary>
    public void Dispose()
    {
        report?.Dispose();
        stopping.Dispose();
    }

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        progress = new ThrottledProgress(this, "Writing a report");
        watched = new WatchedWork(progress, stopping);
        try
        {
            if (Reference is not null) deliveries = DeliveryFiles.Find(this, Reference);
            destination = System.IO.Path.GetFullPath(PathResolver.ResolveLiteral(this, Path));
            // Opened before the work begins, so that a page that must not be replaced is told of now and not after an hour.
            report = new LayerReport(destination, CreateOptions());
        }
        catch (LayeredFileException error)
        {
            ThrowTerminatingError(ErrorRecords.FromCore(error, Path));
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
        }

        if (ShouldProcess(destination, "Write a report")) return;
        report!.Dispose();
        report = null;
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        base.EndProcessing();
        if (report is { Count: > 0 }) Try(destination, Complete);
        progress?.Complete();
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        if (report is not { } page) return;
        var before = FindBefore(file);
        var errors = watched!.Wait(FormattableString.Invariant($"{page.Count + 1}: {file.Name}"), () => page.Add(file, before, watched.Report, stopping.Token));
        foreach (var error in errors) WriteError(ErrorRecords.FromCore(error, file));
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers) =>
        WriteError(ErrorRecords.BadArgument("WholeFilesOnly", "A report tells of whole files. Pipe files from Get-LayerFile, or paths, in place of layers."));

    /// <summary>Paths are read here, so that the page can list those that are no good.</summary>
    private protected override bool TryProcessOther(object item)
    {
        switch (item)
        {
            case FileInfo file:
                Try(file.FullName, () => ReadFile(file.FullName));
                return true;
            case string path:
                IReadOnlyList<string> found = [];
                Try(path, () => found = PathResolver.Resolve(this, path));
                foreach (var each in found) Try(each, () => ReadFile(each));
                return true;
            default:
                return false;
        }
    }

    /// <summary>The delivery before of a file. One that is missing or cannot be read is told of, and the report goes on without it.</summary>
    private LayerFile? FindBefore(LayerFile file)
    {
        if (deliveries is null) return null;
        if (deliveries.Take(file.Path) is not { } found)
        {
            WriteWarning($"{file.Path}: There is no file of this name among those before, so it is new as a whole.");
            return null;
        }

        LayerFile? before = null;
        Try(found.Path, () => before = found.Open());
        return before;
    }

    private ReportOptions CreateOptions() => new()
    {
        Title = Title,
        Profile = Profile ?? LayerProfiles.Default,
        Measures = new HashSet<ReportMeasure>(Measure),
        WithRemedies = IncludeRemedy,
        Status = new StatusOptions { DoneMarks = new HashSet<Mark>(DoneMark), DoneName = DoneName is null ? null : StatusOptions.CreatePattern(DoneName) },
        Force = Force,
    };

    private void ReadFile(string path)
    {
        if (report is not { } page) return;
        LayerFile file;
        try
        {
            file = LayerFiles.Read(path, ReadLimits.Default);
        }
        catch (LayeredFileException error)
        {
            page.AddFailure(path, error);
            throw;
        }

        WriteWarnings(file.Name, file.Warnings);
        ProcessFile(file);
    }

    private void Complete()
    {
        var result = watched!.Wait(destination, () => report!.Complete(stopping.Token));
        WriteVerbose(FormattableString.Invariant($"{result.Path}: {Views.Count(result.FileCount, "file")}, {result.FailureCount} that could not be read, {result.Bytes / 1024} kB"));
        WriteFile(result.Path);
    }
}
