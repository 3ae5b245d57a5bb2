namespace LayerTools.Model.Adjustments;

/// <summary>The curve of one channel.</summary>
/// <param name="Channel">0 for all colours together, else the colour.</param>
/// <param name="Points">Levels that the curve goes through, from dark to light.</param>
/// <param name="Map">A level for each level instead of points; null for a curve of points.</param>
internal sealed record ToneCurve(int Channel, IReadOnlyList<(int Input, int Output)> Points, IReadOnlyList<byte>? Map);
