namespace LayerTools.Json;

/// <summary>Guesses what a misspelt word was meant to be.</summary>
internal static class NearestWord
{
    /// <summary>
    /// The known word that takes the fewest insertions, removals, replacements and swaps of neighbours (restricted Damerau-Levenshtein distance), upper and lower
    /// case being the same; null where even that one is no likely slip.
    /// </summary>
    public static string? Find(string word, IEnumerable<string> known)
    {
        var limit = Math.Max(1, word.Length / 3);
        var best = known.Select(candidate => (candidate, distance: Measure(word.ToUpperInvariant(), candidate.ToUpperInvariant()))).OrderBy(item => item.distance).FirstOrDefault();
        return best.candidate is not null && best.distance <= limit ? best.candidate : null;
    }

    private static int Measure(string from, string to)
    {
        var distance = new int[from.Length + 1, to.Length + 1];
        for (var i = 0; i <= from.Length; i++) distance[i, 0] = i;
        for (var j = 0; j <= to.Length; j++) distance[0, j] = j;
        for (var i = 1; i <= from.Length; i++)
        {
            for (var j = 1; j <= to.Length; j++)
            {
                var replaced = distance[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
                distance[i, j] = Math.Min(replaced, Math.Min(distance[i - 1, j], distance[i, j - 1]) + 1);
                var isSwap = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
                if (isSwap) distance[i, j] = Math.Min(distance[i, j], distance[i - 2, j - 2] + 1);
            }
        }

        return distance[from.Length, to.Length];
    }
}
