using LayerTools.Measures;

namespace LayerTools.Ledgers;

/// <summary>Two people said different things of one part. Plain values, so that tables, CSV and JSON stay readable.</summary>
public sealed record LedgerClash
{
    /// <summary>The part's path, as it is in the file where it is there.</summary>
    public required string LayerPath { get; init; }

    /// <summary>What holds: the state that was set last.</summary>
    public required PartState State { get; init; }

    /// <summary>The note that holds.</summary>
    public required string Note { get; init; }

    /// <summary>Who set what holds; empty where nobody said.</summary>
    public required string Who { get; init; }

    /// <summary>When that was, UTC.</summary>
    public required DateTime? When { get; init; }

    /// <summary>The state that was set before it, by somebody else.</summary>
    public required PartState OtherState { get; init; }

    /// <summary>The note that was set before it.</summary>
    public required string OtherNote { get; init; }

    /// <summary>Who set what does not hold; empty where nobody said.</summary>
    public required string OtherWho { get; init; }

    /// <summary>When that was, UTC.</summary>
    public required DateTime? OtherWhen { get; init; }

    /// <summary>The layered file.</summary>
    public required string FilePath { get; init; }
}
