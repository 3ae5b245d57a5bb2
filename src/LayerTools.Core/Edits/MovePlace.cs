namespace LayerTools.Edits;

/// <summary>Where layers go, seen from a target layer.</summary>
public enum MovePlace
{
    /// <summary>Directly in front of the target: above it in the layer list.</summary>
    Before,

    /// <summary>Directly behind the target: below it in the layer list.</summary>
    After,

    /// <summary>Into the target, which is a group, in front of what is there.</summary>
    Into,
}
