namespace LayerTools.Measures.Detail;

/// <summary>Whether a picture was enlarged.</summary>
/// <param name="Factor">By how much, 1 = not at all; null if it cannot be told.</param>
/// <param name="Certainty">How sure the factor is, 0 to 1.</param>
/// <param name="DetailPercent">Where detail ends, 0 to 100 % of the sampling limit; null without detail.</param>
/// <param name="Reason">Why, as a sentence.</param>
internal sealed record EnlargementEstimate(double? Factor, double Certainty, double? DetailPercent, string Reason);
