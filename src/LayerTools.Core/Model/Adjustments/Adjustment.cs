namespace LayerTools.Model.Adjustments;

/// <summary>A change of the colours below a layer. Levels count from 0 to 255 at every bit depth, channels from 1 for the first colour, with 0 for all colours together.</summary>
/// <param name="Words">What it is, in plain words for people.</param>
internal abstract record Adjustment(string Words);
