using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>What baking did with one layer or group; plain values, so that tables, CSV and JSON stay readable.</summary>
public sealed record RigPart
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The layer's path before.</summary>
    public required string LayerPath { get; init; }

    /// <summary>The layer's number before, 1 = front-most.</summary>
    public required int LayerNumber { get; init; }

    /// <summary>The layer's name after; of a merged layer the name of the part it is in; empty for one that was left out.</summary>
    public required string Name { get; init; }

    /// <summary>What the layer was made of.</summary>
    public required LayerKind Kind { get; init; }

    /// <summary>What became of it.</summary>
    public required RigOutcome Outcome { get; init; }

    /// <summary>What was turned into pixels, separated by semicolons.</summary>
    public required string Baked { get; init; }

    /// <summary>What could not be baked and why, separated by semicolons; or why the layer was left out.</summary>
    public required string NotBaked { get; init; }

    /// <summary>First column after, canvas px.</summary>
    public int Left { get; init; }

    /// <summary>First row after, canvas px.</summary>
    public int Top { get; init; }

    /// <summary>Columns after, px.</summary>
    public int Width { get; init; }

    /// <summary>Rows after, px.</summary>
    public int Height { get; init; }

    /// <summary>The largest difference of any channel between the pictures before and after in the part's rectangle, in steps of 1/255. Neighbours may cause it.</summary>
    public int Difference { get; init; }

    /// <summary>The largest difference over the whole canvas, in steps of 1/255.</summary>
    public int FileDifference { get; init; }

    /// <summary>The mean difference over all pixels and channels of the canvas, in steps of 1/255.</summary>
    public double FileMeanDifference { get; init; }
}
