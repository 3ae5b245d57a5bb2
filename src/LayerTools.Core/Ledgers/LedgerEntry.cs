using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>What a ledger knows of one part.</summary>
public sealed record LedgerEntry
{
    /// <summary>The layer's path.</summary>
    public required string LayerPath { get; init; }

    /// <summary>The layer's id; null where the file has none.</summary>
    public int? Id { get; init; }

    /// <summary>Fingerprint of the painted pixels, place apart: hexadecimal SHA-256; empty for an empty layer.</summary>
    public required string Pixels { get; init; }

    /// <summary>Fingerprint of the masks; empty for a layer without any.</summary>
    public required string Mask { get; init; }

    /// <summary>The rectangle of the painted pixels, canvas px.</summary>
    public required Bounds Painted { get; init; }

    /// <summary>Perceptual hash, hexadecimal; empty where none could be made.</summary>
    public required string Look { get; init; }

    /// <summary>How far the part is: <see cref="PartState.Open"/>, <see cref="PartState.Done"/> or <see cref="PartState.Recheck"/>.</summary>
    public required PartState State { get; init; }

    /// <summary>The layer's colour mark when the entry was written.</summary>
    public Mark Mark { get; init; }

    /// <summary>What somebody noted.</summary>
    public string Note { get; init; } = string.Empty;

    /// <summary>Who set state or note; empty where nobody said.</summary>
    public string Who { get; init; } = string.Empty;

    /// <summary>When state or note was set, UTC to the second; null where that is not known.</summary>
    public DateTime? When { get; init; }
}
