namespace LayerTools.Model.Fills;

/// <summary>How a gradient runs.</summary>
internal enum GradientForm
{
    /// <summary>Along a line.</summary>
    Linear,

    /// <summary>From a centre outward in circles.</summary>
    Radial,

    /// <summary>Around a centre, clockwise.</summary>
    Conic,

    /// <summary>Along a line, from its middle to both ends.</summary>
    Mirrored,

    /// <summary>From a centre outward in squares that stand on a corner.</summary>
    FourSided,
}
