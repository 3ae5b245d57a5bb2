using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Measures.Cover;

/// <summary>A part as cover sees it: a layer with what is clipped to it, which shows nowhere that the layer does not.</summary>
/// <param name="Layer">The layer that gives the part its shape.</param>
/// <param name="Coverage">What it covers.</param>
/// <param name="Hides">Whether it hides what lies behind it.</param>
internal sealed record CoverPart(Layer Layer, CoverageMap Coverage, bool Hides)
{
    /// <summary>Parts more transparent than this, %, show what lies behind them.</summary>
    private const double LeastOpacity = 50;

    /// <summary>The layer's path, put together once.</summary>
    public string Path { get; } = Layer.LayerPath;

    /// <summary>The parts of a figure that count, front to back.</summary>
    public static List<CoverPart> Of(FigureSurvey survey, bool includeHidden) =>
        survey.Parts.Where(part => part.Role == LayerRole.Part && part.Layer.Kind != LayerKind.Fill && BaseOf(part.Layer) == part.Layer && (includeHidden || part.Layer.EffectivelyVisible))
            .Select(part => new CoverPart(part.Layer, part.Coverage, IsOpaque(part.Layer)))
            .ToList();

    /// <summary>The layer that a layer is clipped to; itself if it is not clipped, or nothing lies behind it.</summary>
    public static Layer BaseOf(Layer layer) => layer.Clipped ? ClippingRun.Of(layer).Base ?? layer : layer;

    /// <summary>Whether a layer's colours stand in place of what lies behind: blended normally and mostly opaque, and so are the groups around it.</summary>
    private static bool IsOpaque(Layer layer)
    {
        var opacity = 100.0 * layer.FillOpacity / 255;
        for (var current = layer; current is not null; current = current.GetParent())
        {
            if (current.BlendMode != BlendMode.Normal && !(current.IsGroup && current.BlendMode == BlendMode.PassThrough)) return false;
            opacity *= current.OpacityByte / 255.0;
        }

        return opacity >= LeastOpacity;
    }
}
