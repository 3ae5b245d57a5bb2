namespace LayerTools.Edits;

/// <summary>How new names are made and judged, wherever they come from.</summary>
public sealed record RenameOptions
{
    /// <summary>Lets layers of one group share a name.</summary>
    public bool AllowDuplicate { get; init; }

    /// <summary>Numbers for the new names, or null for none.</summary>
    public Numbering? Numbering { get; init; }
}
