namespace LayerTools.Names;

/// <summary>Whose left and right the names mean.</summary>
public enum SideOwner
{
    /// <summary>The figure's own: with a figure that faces the viewer, its left parts lie in the right half of the canvas.</summary>
    Character,

    /// <summary>The viewer's: left parts lie in the left half of the canvas.</summary>
    Viewer,
}
