namespace LayerTools.Names;

/// <summary>Words that programs put behind the name of a copied layer, in their users' languages.</summary>
internal static class CopyWords
{
    private static readonly HashSet<string> Words = new(
        new[] { "copy", "kopie", "copie", "copia", "копия", "コピー", "複製", "拷贝", "副本", "복사" }.Select(Folding.Fold), StringComparer.Ordinal);

    public static bool Contains(string word) => Words.Contains(Folding.Fold(word));
}
