namespace LayerTools.Names;

/// <summary>Where in a name the side is written.</summary>
public enum SidePlace
{
    /// <summary>Before the part: <c>L Arm 2</c>.</summary>
    Start,

    /// <summary>After the part and before its number: <c>Arm L 2</c>.</summary>
    End,
}
