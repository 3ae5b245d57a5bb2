namespace LayerTools.Names;

/// <summary>The side that a layer's name says.</summary>
public enum Side
{
    /// <summary>The name says no side: a central part.</summary>
    None,

    /// <summary>Left, as the name means it.</summary>
    Left,

    /// <summary>Right, as the name means it.</summary>
    Right,
}
