namespace LayerTools.Measures.Detail;

/// <summary>What a camera looks at.</summary>
public enum FramingKind
{
    /// <summary>The whole figure.</summary>
    Figure,

    /// <summary>Head and chest.</summary>
    Bust,

    /// <summary>The face.</summary>
    Face,

    /// <summary>A layer or a group.</summary>
    Part,
}
