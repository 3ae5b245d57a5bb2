namespace LayerTools.Measures;

/// <summary>How far a file, a group, a side, or the layers of one mark are.</summary>
public sealed record StatusSummary
{
    /// <summary>What the sum is for: a file's path, a group's path, a side or a mark.</summary>
    public required string Key { get; init; }

    /// <summary>Parts that carry pixels.</summary>
    public required int Parts { get; init; }

    /// <summary>Finished parts; null where nothing says what is finished.</summary>
    public required int? Done { get; init; }

    /// <summary>Parts that are not finished, those to be rechecked apart; null where nothing says what is finished.</summary>
    public required int? Open { get; init; }

    /// <summary>Parts that were finished and have to be looked at again, by their ledgers; null without ledgers.</summary>
    public int? Recheck { get; init; }

    /// <summary>Parts that are in a ledger and no longer in their file, which are not among <see cref="Parts"/>; null without ledgers.</summary>
    public int? Missing { get; init; }

    /// <summary>Parts in files where nothing says what is finished.</summary>
    public required int Unknown { get; init; }

    /// <summary>Finished of the parts of which it is known whether they are, %, by their number; null if there are none.</summary>
    public required double? PercentByCount { get; init; }

    /// <summary>The same by painted pixels, %.</summary>
    public required double? PercentByArea { get; init; }

    /// <summary>Parts whose opposite is nowhere in their file.</summary>
    public required int MissingOpposites { get; init; }

    /// <summary>Layers with pixels that are no parts: backdrops, sketches and guides.</summary>
    public required int SetApart { get; init; }

    /// <summary>Painted pixels of all parts, px.</summary>
    public required long PaintedArea { get; init; }

    /// <summary>Whether any of the files carries a mark.</summary>
    public required bool HasMarks { get; init; }

    /// <summary>What the figures do not tell, as sentences; empty if they tell all.</summary>
    public required string Note { get; init; }
}
