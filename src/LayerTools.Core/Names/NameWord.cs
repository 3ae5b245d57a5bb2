namespace LayerTools.Names;

/// <summary>A word of a name.</summary>
/// <param name="Start">Index of its first UTF-16 unit in the name, after its widths were folded.</param>
/// <param name="Text">The word as written.</param>
/// <param name="Kind">What it is.</param>
internal sealed record NameWord(int Start, string Text, NameWordKind Kind)
{
    public int End => Start + Text.Length;
}
