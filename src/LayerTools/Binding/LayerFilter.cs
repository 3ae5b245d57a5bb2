using System.Globalization;
using System.Management.Automation;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Binding;

/// <summary>Chooses layers: each property that is given narrows the choice, several values of one property widen it.</summary>
internal sealed class LayerFilter
{
    public string[]? Name { get; init; }

    public string[]? LayerPath { get; init; }

    public string[]? LiteralLayerPath { get; init; }

    public int[]? LayerNumber { get; init; }

    public LayerKind[]? Kind { get; init; }

    public Side[]? Side { get; init; }

    public Mark[]? Mark { get; init; }

    public bool Leaf { get; init; }

    public bool IsEmpty => Name is null && LayerPath is null && LiteralLayerPath is null && LayerNumber is null && Kind is null && Side is null && Mark is null && !Leaf;

    /// <summary>The layers chosen from those given, in their order.</summary>
    /// <param name="fileName">The file the layers are from, for an error.</param>
    /// <param name="layers">The layers to choose from.</param>
    /// <exception cref="RefusedException">A layer that was named exactly is not there.</exception>
    public IReadOnlyList<Layer> Apply(string fileName, IReadOnlyCollection<Layer> layers)
    {
        CheckExactOnes(fileName, layers);
        var names = ToPatterns(Name);
        var paths = ToPatterns(LayerPath);
        return layers.Where(layer =>
            (names is null || names.Any(pattern => pattern.IsMatch(layer.Name)))
            && (paths is null || paths.Any(pattern => pattern.IsMatch(layer.LayerPath)))
            && (LiteralLayerPath is null || LiteralLayerPath.Contains(layer.LayerPath, StringComparer.Ordinal))
            && (LayerNumber is null || LayerNumber.Contains(layer.LayerNumber))
            && (Kind is null || Kind.Contains(layer.Kind))
            && (Side is null || Side.Contains(layer.Side))
            && (Mark is null || Mark.Contains(layer.Mark))
            && (!Leaf || layer.Kind != LayerKind.Group)).ToList();
    }

    private void CheckExactOnes(string fileName, IReadOnlyCollection<Layer> layers)
    {
        if (LiteralLayerPath?.FirstOrDefault(path => !layers.Any(layer => string.Equals(layer.LayerPath, path, StringComparison.Ordinal))) is { } missing)
        {
            throw new RefusedException(ErrorRecords.LayerNotFound(fileName, $"with the path '{missing}'", missing));
        }

        foreach (var number in LayerNumber ?? [])
        {
            if (layers.All(layer => layer.LayerNumber != number))
            {
                throw new RefusedException(ErrorRecords.LayerNotFound(fileName, $"number {number.ToString(CultureInfo.InvariantCulture)}", number));
            }
        }
    }

    private static List<WildcardPattern>? ToPatterns(string[]? texts) =>
        texts?.Select(text => new WildcardPattern(text, WildcardOptions.IgnoreCase | WildcardOptions.CultureInvariant)).ToList();
}
