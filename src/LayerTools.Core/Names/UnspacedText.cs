namespace LayerTools.Names;

/// <summary>
/// Cuts text that is written without spaces into words: as many of its characters as can be belong to known words, and of several ways the one with the
/// fewest words is taken. A known word does not begin or end within kana that are not all known, so that ブラ is not found in ブラック.
/// </summary>
/// <param name="isKnown">Whether some characters are a word.</param>
/// <param name="longestWord">Characters of the longest known word.</param>
internal sealed class UnspacedText(Func<string, bool> isKnown, int longestWord)
{
    // A known character outweighs any number of words in a text of sensible length.
    private const long KnownCharacter = 1_000_000;

    /// <summary>The words with their starts; the particle の between two nouns is left out.</summary>
    public IReadOnlyList<(int Start, string Text)> Cut(string text)
    {
        // The best ways whose last word is known, and those whose last word is not and may go on.
        var known = new Way?[text.Length + 1];
        var unknown = new Way?[text.Length + 1];
        known[0] = new Way(0, 0, null);
        for (var at = 0; at < text.Length; at++)
        {
            // What is not known needs an edge on both sides; known words follow each other anywhere.
            var isEdge = IsEdge(text, at);
            var begun = isEdge && known[at] is { } last ? new Way(at + 1, last.Score - 1, last) : null;
            unknown[at + 1] = Better(begun, unknown[at] is { } open ? open with { End = at + 1 } : null);
            if ((isEdge ? Better(known[at], unknown[at]) : known[at]) is not { } before) continue;
            for (var end = at + 1; end <= Math.Min(text.Length, at + longestWord); end++)
            {
                if (!IsParticle(text, at, end) && !isKnown(text.Substring(at, end - at))) continue;
                known[end] = Better(known[end], new Way(end, before.Score + (end - at) * KnownCharacter - CountWords(text, at, end), before));
            }
        }

        return Collect(text, Better(known[text.Length], unknown[text.Length]));
    }

    private static List<(int Start, string Text)> Collect(string text, Way? way)
    {
        var words = new List<(int, string)>();
        for (; way?.Before is { } before; way = before)
        {
            if (!IsParticle(text, before.End, way.End)) words.Add((before.End, text.Substring(before.End, way.End - before.End)));
        }

        words.Reverse();
        return words;
    }

    private static Way? Better(Way? one, Way? two) => one is null || two?.Score > one.Score ? two : one;

    // A word that could be two around a particle counts as two: 手前の腕 is an arm this side, not a hand and a forearm.
    private static int CountWords(string text, int start, int end) => IsParticle(text, start, end) ? 0 : 1 + Enumerable.Range(start + 1, end - start - 1).Count(at => Folding.IsParticle(text, at));

    private static bool IsParticle(string text, int start, int end) => end == start + 1 && Folding.IsParticle(text, start);

    private static bool IsEdge(string text, int at) =>
        at == 0 || !((Folding.IsKatakana(text[at - 1]) && Folding.IsKatakana(text[at])) || (Folding.IsHiragana(text[at - 1]) && Folding.IsHiragana(text[at])))
        || Folding.IsParticle(text, at) || Folding.IsParticle(text, at - 1);

    /// <summary>A way to cut the text up to a place.</summary>
    private sealed record Way(int End, long Score, Way? Before);
}
