namespace LayerTools.Model.Fills;

/// <summary>The colours of a gradient from its begin to its end.</summary>
/// <param name="Colors">At least one, in order of place.</param>
/// <param name="Opacities">At least one, in order of place.</param>
/// <param name="Smoothness">0 for straight lines from stop to stop, 1 for a curve through them.</param>
internal sealed record Gradient(IReadOnlyList<ColorStop> Colors, IReadOnlyList<OpacityStop> Opacities, double Smoothness)
{
    public bool IsOpaque => Opacities.All(stop => stop.Opacity >= 1f);
}
