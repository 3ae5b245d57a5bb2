namespace LayerTools.Images;

/// <summary>Pictures that were written.</summary>
/// <param name="Paths">The files, full paths: pictures first, in the order of their layers, then the manifest.</param>
/// <param name="PictureCount">How many of them are pictures.</param>
/// <param name="Warnings">What the user should know, as sentences.</param>
public sealed record ImageResult(IReadOnlyList<string> Paths, int PictureCount, IReadOnlyList<string> Warnings)
{
    /// <summary>What a picture of the whole figure lacks: for each layer its path and the reason.</summary>
    public IReadOnlyList<string> NotDrawn { get; init; } = [];
}
