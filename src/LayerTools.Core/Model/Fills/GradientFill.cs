namespace LayerTools.Model.Fills;

/// <summary>A gradient laid over a rectangle.</summary>
/// <param name="Gradient">Its colours.</param>
/// <param name="Form">How it runs.</param>
/// <param name="Angle">Degrees, counter-clockwise from the right.</param>
/// <param name="Scale">Its length, 1 for one that just fits the rectangle.</param>
/// <param name="IsReversed">Whether it runs from its end to its begin.</param>
/// <param name="IsAligned">Whether the rectangle is the layer's, and not the canvas.</param>
/// <param name="RightShift">How far its middle is moved, in widths of the rectangle.</param>
/// <param name="DownShift">How far its middle is moved, in heights of the rectangle.</param>
internal sealed record GradientFill(Gradient Gradient, GradientForm Form, double Angle, double Scale, bool IsReversed, bool IsAligned, double RightShift, double DownShift) : Fill;
