namespace LayerTools.Model.Adjustments;

/// <summary>Hues that are shifted alike: none before <paramref name="Start"/>, fully from <paramref name="FullStart"/> to <paramref name="FullEnd"/>, none after <paramref name="End"/>; degrees, and over 360° on from 0.</summary>
internal sealed record HueRange(int Start, int FullStart, int FullEnd, int End, HueShift Shift);
