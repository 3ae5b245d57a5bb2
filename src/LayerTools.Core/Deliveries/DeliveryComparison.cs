namespace LayerTools.Deliveries;

/// <summary>What changed between two deliveries of a file.</summary>
/// <param name="Differences">One for each layer and group of both files: first those that a rig would lose, then other changes, then those that are the same; front to back among themselves.</param>
/// <param name="Warnings">What changed about the file as a whole, as sentences.</param>
public sealed record DeliveryComparison(IReadOnlyList<LayerDifference> Differences, IReadOnlyList<string> Warnings);
