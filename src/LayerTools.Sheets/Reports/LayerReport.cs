using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Sheets.Reports;

/// <summary>
/// A report on layered files as one HTML page that needs nothing else: files are added one by one, and what is said of each goes to a temporary file, so that memory goes with
/// one file and a line for each other. The page is put in place whole by <see cref="Complete"/>, or not at all.
/// </summary>
public sealed class LayerReport : IDisposable
{
    private const string Section = "report";

    private readonly string path;
    private readonly ReportOptions options;
    private readonly ReportSpool spool = new();
    private readonly List<OverviewEntry> entries = [];

    /// <param name="path">Where the page goes; ends in .html or .htm. Missing folders are made.</param>
    /// <param name="options">What goes into it.</param>
    /// <exception cref="LayeredFileException">The path does not end so, or the page exists and is not to be replaced.</exception>
    public LayerReport(string path, ReportOptions options)
    {
        this.path = System.IO.Path.GetFullPath(path ?? throw new ArgumentNullException(nameof(path)));
        this.options = options ?? throw new ArgumentNullException(nameof(options));
        if (System.IO.Path.GetExtension(this.path).ToUpperInvariant() is not (".HTML" or ".HTM"))
        {
            throw new LayeredFileException(LayeredFileErrorKind.NotSupported, this.path, Section, -1, "A report is a page in HTML.", "Let the path end in .html.");
        }

        EnsureFree();
    }

    /// <summary>Files so far, those that could not be read included.</summary>
    public int Count => entries.Count;

    /// <summary>Reads, checks and measures a file and adds it.</summary>
    /// <param name="file">The file. Pending edits count.</param>
    /// <param name="before">The delivery before, whose differences are told; null for none.</param>
    /// <param name="progress">Told from one thread how many of how many steps are done; null for nobody.</param>
    /// <param name="cancellation">Stops; the file is not added then.</param>
    /// <returns>What could not be read or worked out. The page says so too, and holds all that could.</returns>
    /// <exception cref="LayeredFileException">The temporary file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public IReadOnlyList<LayeredFileException> Add(LayerFile file, LayerFile? before = null, Action<int, int>? progress = null, CancellationToken cancellation = default)
    {
        if (file is null) throw new ArgumentNullException(nameof(file));
        var reading = new FileReader(file, before, options, progress, cancellation).Read();
        var id = NextId();
        entries.Add(OverviewEntry.Of(reading, spool.Write(html => FileSection.Write(html, reading, id, options))));
        return reading.Errors;
    }

    /// <summary>Adds a file that could not be read.</summary>
    /// <param name="filePath">The file; the page names it without its folder.</param>
    /// <param name="error">What is wrong.</param>
    /// <exception cref="LayeredFileException">The temporary file cannot be written.</exception>
    public void AddFailure(string filePath, LayeredFileException error)
    {
        if (error is null) throw new ArgumentNullException(nameof(error));
        var name = System.IO.Path.GetFileName(filePath ?? throw new ArgumentNullException(nameof(filePath)));
        entries.Add(OverviewEntry.OfFailure(name, spool.Write(html => FileSection.WriteFailure(html, name, Problem.Describe(error)))));
    }

    /// <summary>Writes the page.</summary>
    /// <exception cref="LayeredFileException">The page cannot be written, or came into being meanwhile and is not to be replaced.</exception>
    public ReportResult Complete(CancellationToken cancellation = default)
    {
        EnsureFree();
        using var target = new Formats.AtomicFile(path);
        target.Write(stream => new ReportPage(options, entries, spool).Write(stream, cancellation), 0);
        var bytes = new FileInfo(target.TemporaryPath).Length;
        target.Commit(options.Force);
        return new ReportResult(path, entries.Count(entry => !entry.IsUnread), entries.Count(entry => entry.IsUnread), bytes);
    }

    /// <summary>Gives up what was not completed.</summary>
    public void Dispose() => spool.Dispose();

    private void EnsureFree()
    {
        if (Directory.Exists(path)) throw new LayeredFileException(LayeredFileErrorKind.Unavailable, path, Section, -1, "This is a folder.", "Name a file that ends in .html.");
        if (!options.Force && File.Exists(path)) throw new LayeredFileException(LayeredFileErrorKind.Unavailable, path, Section, -1, "The file exists.", "Use -Force to overwrite it, or another path.");
    }

    private string NextId() => FormattableString.Invariant($"file-{entries.Count + 1}");
}
