namespace LayerTools.Names;

/// <summary>A layer name taken apart.</summary>
public sealed record ParsedName
{
    /// <summary>The name as it was.</summary>
    public required string Text { get; init; }

    /// <summary>The part it names; null if the vocabulary has no word of it.</summary>
    public VocabularyPart? Part { get; init; }

    /// <summary>The side it says.</summary>
    public Side Side { get; init; }

    /// <summary>Its number; null if it has none.</summary>
    public int? Number { get; init; }

    /// <summary>The words that are left over, in their order; empty if all were understood.</summary>
    public string Rest { get; init; } = string.Empty;

    /// <summary>Those of the left-over words that would name a part of their own; they are written before the part, so that the part stays the last one.</summary>
    internal string OtherParts { get; init; } = string.Empty;

    /// <summary>The other left-over words.</summary>
    internal string Remarks { get; init; } = string.Empty;

    /// <summary>The zone of the stack that the part belongs to; null where the name may as well mean another part, so that no layer is moved or blamed on a guess.</summary>
    internal string? SureZone => Certainty >= NameGuess.LeastForPlace ? Part?.Zone : null;

    /// <summary>How sure the reading is, 0 to 1.</summary>
    public double Certainty { get; init; }

    /// <summary>Why, one short sentence for each step from the name to the reading.</summary>
    public IReadOnlyList<string> Reasons { get; init; } = [];
}
