namespace LayerTools.Names;

/// <summary>One thing that a figure is made of, and the words for it.</summary>
public sealed record VocabularyPart
{
    /// <summary>What it is called in profiles, in lower case with hyphens: <c>upper-arm</c>.</summary>
    public required string Key { get; init; }

    /// <summary>The English words that are written for it, each in lower case: <c>upper arm</c>.</summary>
    public required string English { get; init; }

    /// <summary>The Japanese words that are written for it.</summary>
    public required string Japanese { get; init; }

    /// <summary>Where it lies in the stack: one of the zones that the profile puts in order.</summary>
    public required string Zone { get; init; }

    /// <summary>
    /// Whether it is a detail that many parts have, such as a button, a seam or a shadow. Beside a word for another part its words only tell which piece of
    /// that part is meant: a "coat button" is a piece of the coat.
    /// </summary>
    public bool IsDetail { get; init; }

    /// <summary>Whether a figure has one on each side.</summary>
    public bool IsPaired { get; init; }

    /// <summary>Other words for it, in any language.</summary>
    public IReadOnlyList<string> Synonyms { get; init; } = [];
}
