using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;

namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>What of a layer's fill and effects is drawn in a way that neither a specification nor a real file has confirmed.</summary>
internal static class EffectNotes
{
    /// <summary>One note for each, in words that follow the layer's path.</summary>
    public static IEnumerable<string> Find(Layer layer, LayerFile file)
    {
        var own = DescribedContent.IsLiveFill(layer) && layer.Detail.Fill is { } fill ? Find(fill) : [];
        var effects = layer.Detail.Features.HasFlag(LayerFeatures.Effects) ? layer.Detail.GetEffects(file.Detail).Where(effect => LayerEffects.FindReason(effect, file) is null).SelectMany(Find) : [];
        return own.Concat(effects).Distinct();
    }

    private static IEnumerable<string> Find(Effect effect) => effect switch
    {
        FillEffect over => Find(over.Fill),
        OutlineEffect outline => Find(outline.Fill),
        ShadeEffect shade => Find(shade),
        _ => [],
    };

    private static IEnumerable<string> Find(ShadeEffect shade)
    {
        if (shade.Spread > 0 && shade.Size > 0) yield return "shade or halo with a solid part, whose extent is from memory";
        if (shade.IsFromCentre) yield return "halo from the centre, drawn as the inverse of one from the edge";
    }

    private static IEnumerable<string> Find(Fill fill)
    {
        switch (fill)
        {
            case GradientFill gradient:
                if (gradient.Form == GradientForm.FourSided) yield return "four-sided gradient, whose direction is from memory";
                if (gradient.Gradient.Smoothness < 1) yield return "gradient of less than full smoothness, mixed with straight lines";
                break;
            case PatternFill { Scale: not 1 }:
                yield return "pattern in another size, read by bilinear interpolation";
                break;
        }
    }
}
