using LayerTools.Checks;
using LayerTools.Deliveries;
using LayerTools.Errors;
using LayerTools.Measures;
using LayerTools.Measures.Budget;
using LayerTools.Measures.Cover;
using LayerTools.Measures.Detail;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;

namespace LayerTools.Sheets.Reports;

/// <summary>All that a report says of one file. What is null was not asked for or could not be worked out, see <see cref="Problems"/>.</summary>
internal sealed record FileReading(LayerFile File)
{
    /// <summary>The figure as it is seen; null if it cannot be drawn or shows nothing.</summary>
    public ReportPicture? Picture { get; init; }

    /// <summary>Pictures of parts; those that show nothing are not here.</summary>
    public required IReadOnlyDictionary<Layer, ReportPicture> Pictures { get; init; }

    /// <summary>Parts whose pixels cannot be read, and why.</summary>
    public required IReadOnlyDictionary<Layer, string> Unreadable { get; init; }

    public IReadOnlyList<LayerStatus>? Statuses { get; init; }

    public StatusSummary? Sum { get; init; }

    public IReadOnlyList<Finding>? Findings { get; init; }

    public IReadOnlyList<LayerSymmetry>? Symmetry { get; init; }

    public IReadOnlyList<PartCover>? Cover { get; init; }

    public IReadOnlyList<FramingDetail>? Detail { get; init; }

    public TextureBudget? Budget { get; init; }

    /// <summary>What changed since the delivery before; null if none was given or it could not be compared.</summary>
    public DeliveryComparison? Changes { get; init; }

    /// <summary>What is missing in the report and why, as sentences.</summary>
    public required IReadOnlyList<string> Problems { get; init; }

    /// <summary>What the drawn pictures leave out, as phrases.</summary>
    public required IReadOnlyList<string> NotDrawn { get; init; }

    /// <summary>The errors behind the problems, each once.</summary>
    public required IReadOnlyList<LayeredFileException> Errors { get; init; }
}
