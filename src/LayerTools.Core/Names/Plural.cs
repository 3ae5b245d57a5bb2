namespace LayerTools.Names;

/// <summary>English plurals. Guesses by ending: what is no word is in no vocabulary either.</summary>
internal static class Plural
{
    /// <summary>The word itself, then what may be its singular.</summary>
    /// <param name="word">In lower case.</param>
    public static IEnumerable<string> Forms(string word)
    {
        yield return word;
        if (word.Length < 4 || word[word.Length - 1] != 's' || word.EndsWith("ss", StringComparison.Ordinal)) yield break;
        yield return Less(word, 1);
        if (word.EndsWith("es", StringComparison.Ordinal)) yield return Less(word, 2);
        if (word.EndsWith("ies", StringComparison.Ordinal)) yield return Less(word, 3) + "y";
        if (word.EndsWith("ves", StringComparison.Ordinal)) yield return Less(word, 3) + "f";
    }

    private static string Less(string word, int count) => word.Substring(0, word.Length - count);
}
