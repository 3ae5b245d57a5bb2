using LayerTools.Measures;

namespace LayerTools.Sheets.Reports;

/// <summary>The line of one file in the overview, and where the rest that is said of it lies.</summary>
internal sealed record OverviewEntry(string Name, ReportPiece Section)
{
    /// <summary>Canvas and the like, as phrases.</summary>
    public string Facts { get; private init; } = string.Empty;

    /// <summary>Null if the figure cannot be drawn or shows nothing.</summary>
    public ReportPicture? Picture { get; private init; }

    /// <summary>Null if nobody can tell.</summary>
    public StatusSummary? Sum { get; private init; }

    /// <summary>Findings of each severity; null if the file could not be checked.</summary>
    public SeverityCounts? Findings { get; private init; }

    /// <summary>Whether the file could not be read at all.</summary>
    public bool IsUnread { get; private init; }

    /// <summary>Whether something in the file could not be read or worked out.</summary>
    public bool HasProblems { get; private init; }

    public static OverviewEntry Of(FileReading reading, ReportPiece section) => new(reading.File.Name, section)
    {
        Facts = ReportWords.Facts(reading.File),
        Picture = reading.Picture,
        Sum = reading.Sum,
        Findings = reading.Findings is { } findings ? SeverityCounts.Of(findings) : null,
        HasProblems = reading.Errors.Count > 0,
    };

    public static OverviewEntry OfFailure(string name, ReportPiece section) => new(name, section) { IsUnread = true };
}
