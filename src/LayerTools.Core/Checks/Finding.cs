namespace LayerTools.Checks;

/// <summary>Something that a rule found. Plain values, so that tables, CSV and JSON stay readable.</summary>
public sealed record Finding
{
    /// <summary>How bad it is.</summary>
    public required Severity Severity { get; init; }

    /// <summary>The id of the rule.</summary>
    public required string Rule { get; init; }

    /// <summary>The path of the layer; null for what concerns the whole file.</summary>
    public string? LayerPath { get; init; }

    /// <summary>What is wrong, as a sentence.</summary>
    public required string Message { get; init; }

    /// <summary>What was measured, with its unit; null where nothing is.</summary>
    public string? Measured { get; init; }

    /// <summary>What it should be, with its unit.</summary>
    public string? Limit { get; init; }

    /// <summary>What to do: a whole command that can be pasted where there is one, else a sentence.</summary>
    public required string Remedy { get; init; }

    /// <summary>The number of the layer, 1 = front-most; null for the whole file.</summary>
    public int? LayerNumber { get; init; }

    /// <summary>The file.</summary>
    public required string FilePath { get; init; }
}
