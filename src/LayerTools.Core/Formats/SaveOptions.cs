namespace LayerTools.Formats;

/// <summary>How a file is written.</summary>
public sealed record SaveOptions
{
    /// <summary>Replace the file that the model was read from.</summary>
    public bool InPlace { get; init; }

    /// <summary>Overwrite an existing destination.</summary>
    public bool Force { get; init; }

    /// <summary>Where a copy of a file goes before it is replaced; made if missing. Null for no copy.</summary>
    public string? BackupFolder { get; init; }
}
