namespace LayerTools.Formats.Psd.Blocks;

/// <summary>The table of blocks that the model knows. All others are kept as they are.</summary>
internal static class LayerBlocks
{
    private static readonly Dictionary<uint, LayerBlock> ByKey = new LayerBlock[]
    {
        new UnicodeNameBlock(),
        new LayerIdBlock(),
        new DividerBlock("lsct"),
        new DividerBlock("lsdk"),
        new MarkBlock(),
        new LockBlock(),
        new FillOpacityBlock(),
    }.ToDictionary(block => PsdKey.Parse(block.Key));

    public static IEnumerable<LayerBlock> All => ByKey.Values;

    public static LayerBlock? Find(uint key) => ByKey.TryGetValue(key, out var block) ? block : null;
}
