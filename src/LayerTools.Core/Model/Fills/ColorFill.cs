namespace LayerTools.Model.Fills;

/// <summary>One colour everywhere.</summary>
internal sealed record ColorFill(FillColor Color) : Fill;
