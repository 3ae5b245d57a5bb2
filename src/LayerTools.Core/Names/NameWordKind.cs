namespace LayerTools.Names;

/// <summary>What a word of a name is.</summary>
internal enum NameWordKind
{
    /// <summary>A word that may name a part, or a sign.</summary>
    Plain,

    /// <summary>Says left.</summary>
    Left,

    /// <summary>Says right.</summary>
    Right,

    /// <summary>A whole number.</summary>
    Number,

    /// <summary>A word for a copy, or the number behind one.</summary>
    Copy,
}
