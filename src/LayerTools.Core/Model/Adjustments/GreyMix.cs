namespace LayerTools.Model.Adjustments;

/// <summary>Turns colours to grey, some lighter than others.</summary>
/// <param name="Weights">How light red, yellow, green, cyan, blue and magenta become, in percent, −200 to 300.</param>
/// <param name="Tint">The colour that the grey is tinted with, 0 to 1 each; null for plain grey.</param>
internal sealed record GreyMix(IReadOnlyList<double> Weights, RgbTriple? Tint) : Adjustment("mix to grey");
