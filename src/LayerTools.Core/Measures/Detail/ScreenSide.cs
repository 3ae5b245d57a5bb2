namespace LayerTools.Measures.Detail;

/// <summary>The side of a screen that a framing fills from edge to edge; along the other one there is room.</summary>
public enum ScreenSide
{
    /// <summary>It is as wide as the screen.</summary>
    Width,

    /// <summary>It is as high as the screen.</summary>
    Height,
}
