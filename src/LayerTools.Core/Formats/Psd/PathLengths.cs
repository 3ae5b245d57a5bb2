using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Sums up how long the paths of all layers are, without putting one together, so that a file whose deep groups have endless names is refused before its paths fill the memory.</summary>
/// <param name="filePath">The file.</param>
/// <param name="limits">How much they may take together.</param>
internal sealed class PathLengths(string filePath, ReadLimits limits)
{
    private readonly List<long> ofGroups = [];
    private long sum;

    /// <summary>Counts a layer; a group comes before its layers.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="depth">How many groups it lies in.</param>
    /// <exception cref="LayeredFileException">The limit is passed.</exception>
    public void Add(Layer layer, int depth)
    {
        var length = (depth == 0 ? 0 : ofGroups[depth - 1] + 1) + layer.PathSegment.Length;
        ofGroups.RemoveRange(depth, ofGroups.Count - depth);
        ofGroups.Add(length);
        sum += length;
        if (sum * sizeof(char) <= (long)limits.PathMegabytes << 20) return;
        throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, filePath, "layers", -1,
            $"The paths of its layers take more than {limits.PathMegabytes} MB; names are very long, and groups deep.",
            $"If you trust the file, raise the limit: Get-LayerFile -Limit @{{ {nameof(ReadLimits.PathMegabytes)} = ... }}.");
    }
}
