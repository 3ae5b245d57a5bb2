namespace LayerTools.Names;

/// <summary>The words that say a side: those that every file may use (see <see cref="SideName"/>) and a profile's own.</summary>
internal sealed class SideWords
{
    private readonly Dictionary<string, Side> sides = new(StringComparer.Ordinal);

    public SideWords(SideStyle style)
    {
        Add(Side.Left, ["l", "left", "左", .. style.LeftTokens, style.Left]);
        Add(Side.Right, ["r", "right", "右", .. style.RightTokens, style.Right]);
    }

    /// <summary>The side that a word says; null for any other word.</summary>
    public Side? Find(string word) => sides.TryGetValue(Folding.Fold(word), out var side) ? side : null;

    private void Add(Side side, IEnumerable<string> words)
    {
        foreach (var word in words.Select(Folding.Fold).Where(word => word.Length > 0)) sides[word] = side;
    }
}
