using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>One kind of block whose content the model knows: its key, how it is read and how it is written, side by side.</summary>
internal abstract class LayerBlock(string key)
{
    /// <summary>The four-character key.</summary>
    public string Key { get; } = key;

    /// <summary>Tells the model what the block says; data that cannot be understood changes nothing and is kept.</summary>
    public abstract void Load(ReadOnlySpan<byte> data, Layer layer);

    /// <summary>Whether the stored data already says what the model says, so that it is kept byte for byte.</summary>
    public abstract bool Says(ReadOnlySpan<byte> data, Layer layer);

    /// <summary>Whether a layer without this block needs one.</summary>
    public abstract bool IsMissed(Layer layer, PsdHabits habits);

    /// <summary>The data that says what the model says.</summary>
    /// <param name="stored">The data it replaces, whose length and filling set the form; empty for a new block.</param>
    /// <param name="layer">The layer.</param>
    /// <param name="habits">How the file's writer does things.</param>
    public abstract byte[] Store(ReadOnlySpan<byte> stored, Layer layer, PsdHabits habits);
}
