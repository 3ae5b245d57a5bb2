namespace LayerTools.Profiles;

/// <summary>What the canvas has to be.</summary>
public sealed record CanvasProfile
{
    /// <summary>Columns, px; null for any.</summary>
    public int? Width { get; init; }

    /// <summary>Rows, px; null for any.</summary>
    public int? Height { get; init; }

    /// <summary>Pixels per inch; null for any.</summary>
    public double? Ppi { get; init; }

    /// <summary>Whether the width has to be even, so that the centre line lies between two columns. Common practice.</summary>
    public bool EvenWidth { get; init; } = true;
}
