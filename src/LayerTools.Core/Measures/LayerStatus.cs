using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Measures;

/// <summary>How far one layer is. Plain values, so that tables, CSV and JSON stay readable.</summary>
public record LayerStatus
{
    /// <summary>The layer's path.</summary>
    public required string LayerPath { get; init; }

    /// <summary>The layer's name.</summary>
    public required string Name { get; init; }

    /// <summary>The layer's number, 1 = front-most; 0 for a part that a ledger knows and that is no longer in the file.</summary>
    public required int LayerNumber { get; init; }

    /// <summary>The path of the group that the layer lies in; empty for an outermost layer.</summary>
    public required string Group { get; init; }

    /// <summary>The side that the layer's name says, or else the nearest group around it.</summary>
    public required Side Side { get; init; }

    /// <summary>The layer's mark, or where it has none that of the nearest group around it that has one.</summary>
    public required Mark Mark { get; init; }

    /// <summary>What the layer is for, by its name or the nearest group around it whose name tells.</summary>
    public required LayerRole Role { get; init; }

    /// <summary>Whether the layer counts: a part of the figure that carries pixels.</summary>
    public required bool IsPart { get; init; }

    /// <summary>Whether the part is finished; null where nothing says so: in a file without any mark, and for what is no part.</summary>
    public required bool? Done { get; init; }

    /// <summary>How far the part is by a ledger; null without one, for what is no part, and where several entries could be meant.</summary>
    public PartState? State { get; init; }

    /// <summary>Whether the part has a side and its opposite is nowhere in the file.</summary>
    public required bool MissingOpposite { get; init; }

    /// <summary>Whether the part's opposite is in the file; null for parts without a side.</summary>
    public required bool? HasOpposite { get; init; }

    /// <summary>Pixels that are not fully transparent, px.</summary>
    public required long PaintedArea { get; init; }

    /// <summary>Whether any layer of the file carries a mark.</summary>
    public required bool FileHasMarks { get; init; }

    /// <summary>The file.</summary>
    public required string FilePath { get; init; }
}
