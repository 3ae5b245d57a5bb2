namespace LayerTools.Model.Fills;

/// <summary>A fill that cannot be drawn.</summary>
/// <param name="Reason">What is in the way, in words that follow the layer's path.</param>
internal sealed record UndrawnFill(string Reason) : Fill;
