namespace LayerTools.Formats;

/// <summary>What a save did.</summary>
/// <param name="Path">The file written, or left alone.</param>
/// <param name="Written">False if nothing was pending and the file was left as it is.</param>
/// <param name="LayerCount">Layers and groups in the file.</param>
/// <param name="Warnings">What the user should know, as sentences.</param>
public sealed record SaveResult(string Path, bool Written, int LayerCount, IReadOnlyList<string> Warnings);
