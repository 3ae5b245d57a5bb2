namespace LayerTools.Model;

/// <summary>What a layer is made of.</summary>
public enum LayerKind
{
    /// <summary>Painted pixels.</summary>
    Pixel,

    /// <summary>A group of layers.</summary>
    Group,

    /// <summary>Live text.</summary>
    Text,

    /// <summary>A fill cut out by a path.</summary>
    Shape,

    /// <summary>A fill over the whole canvas: one colour, a gradient or a pattern.</summary>
    Fill,

    /// <summary>A change of what lies below, without pixels of its own.</summary>
    Adjustment,

    /// <summary>Content placed from another file.</summary>
    Placed,
}
