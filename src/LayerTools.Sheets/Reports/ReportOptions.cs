using LayerTools.Measures;
using LayerTools.Profiles;

namespace LayerTools.Sheets.Reports;

/// <summary>What goes into a report.</summary>
public sealed record ReportOptions
{
    /// <summary>The heading of the page.</summary>
    public string Title { get; init; } = "Layer report";

    /// <summary>When the report was made, as it is printed under the heading.</summary>
    public DateTimeOffset Time { get; init; } = DateTimeOffset.Now;

    /// <summary>What files have to be like.</summary>
    public LayerProfile Profile { get; init; } = LayerProfiles.Default;

    /// <summary>What counts as finished.</summary>
    public StatusOptions Status { get; init; } = new();

    /// <summary>What is measured beside status and findings.</summary>
    public ISet<ReportMeasure> Measures { get; init; } = new HashSet<ReportMeasure>();

    /// <summary>Whether findings tell what to do. Remedies are commands that name the files by their full paths on this machine.</summary>
    public bool WithRemedies { get; init; }

    /// <summary>Whether a report that exists is replaced.</summary>
    public bool Force { get; init; }
}
