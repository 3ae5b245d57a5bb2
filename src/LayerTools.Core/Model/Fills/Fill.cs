namespace LayerTools.Model.Fills;

/// <summary>What a surface is filled with where a file stores instructions in place of pixels.</summary>
internal abstract record Fill;
