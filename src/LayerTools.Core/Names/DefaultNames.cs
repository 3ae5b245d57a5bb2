namespace LayerTools.Names;

/// <summary>Names that programs give to new layers, in their users' languages: a word for a layer, a group or a shape, and a number.</summary>
internal static class DefaultNames
{
    private static readonly NameSplitter Splitter = new(new SideStyle(), Vocabulary.Empty);

    private static readonly HashSet<string> Words = new(
        new[]
        {
            "layer", "new layer", "group", "new group", "folder", "new folder", "shape", "rectangle", "ellipse", "polygon", "path", "image", "untitled", "color fill", "vector",
            "レイヤー", "新規レイヤー", "グループ", "新規グループ", "フォルダ", "フォルダー", "新規フォルダ", "シェイプ", "長方形", "楕円形", "名称未設定", "ベクター",
            "ebene", "neue ebene", "gruppe", "neue gruppe", "ordner", "form", "calque", "nouveau calque", "groupe", "dossier", "forme",
            "capa", "nueva capa", "grupo", "carpeta", "forma", "livello", "nuovo livello", "gruppo", "cartella", "camada", "nova camada", "pasta",
            "laag", "groep", "lager", "grupp", "lag", "taso", "ryhmä", "warstwa", "grupa", "vrstva", "skupina", "katman", "слой", "новый слой", "группа",
            "图层", "新建图层", "圖層", "组", "群組", "图层组", "레이어", "새 레이어", "그룹", "폴더",
        }.Select(Folding.Fold),
        StringComparer.Ordinal);

    /// <summary>Whether words, less numbers and words for a copy, are such a name or nothing at all.</summary>
    public static bool Contains(IEnumerable<string> words) => string.Concat(words.Select(Folding.Fold)) is var folded && (folded.Length == 0 || Words.Contains(folded));

    /// <summary>Whether a whole name is such a name: <c>Layer 37</c>, <c>レイヤー 12 のコピー 2</c>, <c>12</c>.</summary>
    public static bool IsDefault(string name) =>
        Contains(Splitter.Split(name).Where(word => word.Kind is not (NameWordKind.Number or NameWordKind.Copy)).Select(word => word.Text));
}
