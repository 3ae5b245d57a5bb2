using System.Text.RegularExpressions;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;

namespace LayerTools.Measures;

/// <summary>Tells how far the layers of a file are, pending edits included.</summary>
/// <param name="options">What counts as finished, and which layers are no parts; null for common practice.</param>
public sealed class StatusReader(StatusOptions? options = null)
{
    private readonly StatusOptions options = options ?? new StatusOptions();

    /// <summary>The status of every chosen layer that is no group, front to back; a chosen group stands for the layers in it. Unpacks the alpha of each.</summary>
    /// <param name="file">The file.</param>
    /// <param name="layers">The chosen layers; null for all.</param>
    /// <exception cref="LayeredFileException">A layer's alpha is damaged, the file changed on disk, or a pattern takes too long.</exception>
    public IReadOnlyList<LayerStatus> Read(LayerFile file, IReadOnlyList<Layer>? layers = null)
    {
        var chosen = Selection.InStackOrder(file, (layers ?? file.GetChildren()).SelectMany(layer => new[] { layer }.Concat(layer.GetLayers())));
        var opposites = new Opposites(file);
        var hasMarks = file.GetLayers().Any(layer => layer.Mark != Mark.None);
        using var reader = new PixelReader(file);
        try
        {
            return [.. chosen.Where(layer => !layer.IsGroup).Select(layer => Read(file, layer, reader, opposites, hasMarks))];
        }
        catch (RegexMatchTimeoutException error)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, "layers", -1,
                $"The pattern '{error.Pattern}' took too long.", "Make it simpler; repetitions inside repetitions, such as (a+)+, are slow.", error);
        }
    }

    private LayerStatus Read(LayerFile file, Layer layer, PixelReader reader, Opposites opposites, bool hasMarks)
    {
        // An adjustment or a fill covers what lies below without being cut out as a part is.
        var area = layer.Kind is LayerKind.Adjustment or LayerKind.Fill ? 0 : PaintedPixels.Count(reader, layer);
        var role = options.FindRole(layer);
        var isPart = role == LayerRole.Part && area > 0;
        var side = Opposites.SideOf(layer);
        bool? hasOpposite = side == Side.None || !isPart ? null : opposites.FindAcross(layer) is not null;
        var mark = FindMark(layer);
        return new LayerStatus
        {
            FilePath = file.Path,
            LayerPath = layer.LayerPath,
            LayerNumber = layer.LayerNumber,
            Name = layer.Name,
            Group = layer.GetParent()?.LayerPath ?? string.Empty,
            Side = side,
            Mark = mark,
            Role = role,
            IsPart = isPart,
            Done = isPart && (hasMarks || options.DoneName is not null) ? options.DoneMarks.Contains(mark) || options.DoneName?.IsMatch(layer.Name) == true : null,
            HasOpposite = hasOpposite,
            MissingOpposite = hasOpposite == false,
            PaintedArea = area,
            FileHasMarks = hasMarks,
        };
    }

    private static Mark FindMark(Layer layer)
    {
        var marked = layer;
        while (marked.Mark == Mark.None && marked.GetParent() is { } group) marked = group;
        return marked.Mark;
    }
}
