namespace LayerTools.Names;

/// <summary>Words that name no part, but tell which piece or which sort of a part is meant. General words, put together by us.</summary>
internal static class Qualifiers
{
    // The directions for which a vocabulary may have a part of its own: "hair" and "front" are "hair-front".
    private static readonly Dictionary<string, string> Directions = Fold(
        ("front", ["front", "前", "手前", "表"]),
        ("back", ["back", "rear", "behind", "後ろ", "後", "うしろ", "裏", "奥"]),
        ("side", ["side", "横", "サイド"]),
        ("upper", ["upper", "top", "上"]),
        ("lower", ["lower", "bottom", "下"]),
        ("inside", ["inside", "inner", "interior", "内側", "内", "中"]));

    private static readonly HashSet<string> Others = new(
        new[]
        {
            "outside", "outer", "middle", "mid", "center", "centre", "near", "far", "tip", "end", "root", "base", "edge", "rim", "fold", "main", "sub", "piece", "part",
            "big", "small", "large", "little", "long", "short", "thick", "thin", "color", "colour", "fill", "flat", "open", "closed", "light", "dark", "under", "over",
            "first", "second", "third", "half", "extra", "group", "and", "of", "the", "with", "on", "for",
            "外側", "外", "中央", "真ん中", "先", "毛先", "先端", "根元", "根本", "付け根", "端", "色", "塗り", "下塗り", "大", "小", "長", "短", "太", "細",
            "開き", "開", "閉じ", "閉", "部分", "パーツ", "用", "差分", "束", "折り", "ベース", "グループ",
        }.Select(Folding.Fold),
        StringComparer.Ordinal);

    /// <summary>Whether the word is one.</summary>
    public static bool Contains(string word) => Folding.Fold(word) is var folded && (Others.Contains(folded) || Directions.ContainsKey(folded));

    /// <summary>The direction that the word says, as keys of parts write it; null if it says none.</summary>
    public static string? FindDirection(string word) => Directions.TryGetValue(Folding.Fold(word), out var direction) ? direction : null;

    private static Dictionary<string, string> Fold(params (string Direction, string[] Words)[] directions) => directions
        .SelectMany(direction => direction.Words.Select(word => (Word: Folding.Fold(word), direction.Direction)))
        .ToDictionary(item => item.Word, item => item.Direction, StringComparer.Ordinal);
}
