using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing.Adjustments;
using LayerTools.Pixels.Compositing.Blending;
using LayerTools.Pixels.Compositing.Effects;
using LayerTools.Pixels.Compositing.Fills;

namespace LayerTools.Pixels.Compositing;

/// <summary>Says whether a file's picture can be drawn from its layers.</summary>
public static class CompositorSupport
{
    /// <summary>A channel that has a compression word and nothing after it.</summary>
    private const int EmptyLength = 2;

    /// <summary>What the file uses that cannot be drawn: for each layer its path and the reason. Empty if the picture can be drawn. Hidden layers do not count.</summary>
    /// <param name="file">The file.</param>
    public static IReadOnlyList<string> FindNotDrawn(LayerFile file)
    {
        if (!MixesColors(file)) return [$"The file's colour mode is {file.ColorMode}."];
        if (file.BitDepth is not (8 or 16 or 32)) return [FormattableString.Invariant($"The file has {file.BitDepth} bit a sample.")];
        if (file.LayerCount == 0) return ["The file has no layers; its merged picture is all it has."];
        var found = new List<string>();
        Inspect(file.GetChildren(), found);
        return found;
    }

    /// <summary>What is drawn in a way that neither a specification nor measurement confirms, in words, with the layer's path where it is about one. Hidden layers do not count.</summary>
    /// <param name="file">The file.</param>
    public static IReadOnlyList<string> FindNotes(LayerFile file)
    {
        var notes = new List<string>();
        if (file.ColorMode == ColorMode.Duotone) notes.Add("the inks of a duotone are left out");
        if (ColorConverter.CanConvert(file))
        {
            using var reader = new PixelReader(file);
            if (reader.CreateConverter().Note is { } note) notes.Add(note);
        }

        foreach (var layer in file.GetLayers().Reverse().Where(layer => layer is { EffectivelyVisible: true, OpacityByte: > 0 }))
        {
            if (layer.Detail.Adjustment is { } adjustment && CanAdjust(layer) && !ColorAdjusters.IsKnown(adjustment))
            {
                notes.Add($"{layer.LayerPath}: {adjustment.Words}, drawn by a formula of our own, may look somewhat different where the file was made");
            }

            notes.AddRange(BlendNotes.Find(layer).Select(note => $"{layer.LayerPath}: {note}"));
            if (MixedColors.AreLight(file)) notes.AddRange(EffectNotes.Find(layer, file).Select(note => $"{layer.LayerPath}: {note}"));
            if (file.ColorMode == ColorMode.Cmyk && layer.BlendMode is not (BlendMode.Normal or BlendMode.PassThrough) && CanMix(layer)) notes.Add($"{layer.LayerPath}: blend mode {layer.BlendMode}, mixed ink by ink");
        }

        return notes;
    }

    /// <summary>Whether layers are mixed in the file's own colours.</summary>
    internal static bool MixesColors(LayerFile file) => file.ColorMode is ColorMode.Rgb or ColorMode.Grayscale or ColorMode.Duotone or ColorMode.Cmyk or ColorMode.Lab;

    /// <summary>Whether a layer's blend mode is defined for the file's colours: all for grey and RGB, those that mix each channel alone for inks, normal for L*a*b*.</summary>
    internal static bool CanMix(Layer layer) => layer.File?.ColorMode switch
    {
        ColorMode.Lab => layer.BlendMode == BlendMode.Normal,
        ColorMode.Cmyk => layer.BlendMode is not (BlendMode.Hue or BlendMode.Saturation or BlendMode.Color or BlendMode.Luminosity or BlendMode.DarkerColor or BlendMode.LighterColor),
        _ => true,
    };

    /// <exception cref="LayeredFileException">The file's layers cannot be mixed at all.</exception>
    internal static void EnsureColors(LayerFile file)
    {
        if (MixesColors(file) && file.BitDepth is 8 or 16 or 32) return;
        throw new LayeredFileException(LayeredFileErrorKind.NotSupported, file.Path, "layers", -1,
            FormattableString.Invariant($"Layers in colour mode {file.ColorMode} with {file.BitDepth} bits cannot be drawn."), "Convert the file to RGB with 8, 16 or 32 bits.");
    }

    /// <summary>Why a layer's own pixels cannot be drawn; null if they can.</summary>
    internal static string? FindContentReason(Layer layer)
    {
        if (DescribedContent.IsLiveFill(layer) && FindFillReason(layer) is { } reason) return reason;
        return LacksColors(layer) ? "colour channels are missing" : null;
    }

    private static void Inspect(IReadOnlyList<Layer> layers, List<string> found)
    {
        foreach (var run in ClippingRun.Split(layers).Reverse().Where(run => run.Base is not { Visible: false }))
        {
            var clipped = run.Clipped.Where(layer => layer.Visible).ToList();
            foreach (var layer in clipped) Inspect(layer, hasClipped: false, found);
            if (run.Base is not null) Inspect(run.Base, clipped.Count > 0, found);
        }
    }

    private static void Inspect(Layer layer, bool hasClipped, List<string> found)
    {
        if (!DrawsNothing(layer)) found.AddRange(FindReasons(layer, hasClipped).Select(reason => $"{layer.LayerPath}: {reason}"));
        Inspect(layer.GetChildren(), found);
    }

    /// <summary>Whatever else an empty layer says about itself, it is not seen. Fills and adjustments work without pixels.</summary>
    private static bool DrawsNothing(Layer layer) =>
        layer.OpacityByte == 0 || (layer.Kind is LayerKind.Pixel or LayerKind.Text or LayerKind.Placed && layer.Bounds.IsEmpty);

    private static IEnumerable<string> FindReasons(Layer layer, bool hasClipped)
    {
        var features = layer.Detail.Features;
        var isPassThroughGroup = layer.IsGroup && layer.BlendMode == BlendMode.PassThrough;
        if (layer.Kind == LayerKind.Adjustment && !CanAdjust(layer)) yield return "adjustment layer";
        if (layer.Kind == LayerKind.Adjustment && hasClipped) yield return "layers clipped to an adjustment layer";
        if (DescribedContent.IsLiveFill(layer) && FindFillReason(layer) is { } fillReason) yield return fillReason;
        if (DescribedContent.IsLiveFill(layer) && features.HasFlag(LayerFeatures.PathStroke)) yield return "stroked path without stored pixels";
        if (LacksColors(layer)) yield return "colour channels are missing";
        if (!isPassThroughGroup && (Blenders.TryGet(layer.BlendMode) is null || !CanMix(layer))) yield return $"blend mode {layer.BlendMode}";
        if (layer is { Kind: LayerKind.Shape, HasStoredPixels: true, Mask.HasVectorSoftening: true }) yield return "shape with density or feather";
        foreach (var reason in FindEffectReasons(layer)) yield return reason;
        if (!MixesLight(layer) && layer.Detail.Artboard is { Background: not null }) yield return "colour behind a group in other colours than RGB and grey";
        if (!MixesLight(layer) && features.HasFlag(LayerFeatures.BlendingRanges)) yield return "blending ranges in other colours than RGB and grey";
        if (isPassThroughGroup && features.HasFlag(LayerFeatures.BlendingRanges)) yield return "blending ranges of a pass-through group";
        if (layer.File?.ColorMode is ColorMode.Lab && features.HasFlag(LayerFeatures.ChannelRestrictions)) yield return "channels left out of blending in colour mode Lab";
        if (layer.Clipped && features.HasFlag(LayerFeatures.Knockout)) yield return "knockout of a clipped layer";
        if (features.HasFlag(LayerFeatures.Artboard) && layer.Detail.Artboard is null) yield return "artboard that cannot be read";
    }

    /// <summary>Channels that are not there would be black, which is not what anybody painted. Where alpha is empty too nothing is seen of it.</summary>
    private static bool LacksColors(Layer layer)
    {
        if (layer.IsGroup || layer.Kind == LayerKind.Adjustment || layer.Bounds.IsEmpty || DescribedContent.IsLiveFill(layer) || layer.File is not { } file) return false;
        if (layer.FindPlane(PlaneRole.Alpha) is { StoredLength: <= EmptyLength }) return false;
        return Enumerable.Range(0, MixedColors.GetCount(file)).Any(color => layer.FindPlane(PlaneRole.Color0 + color) is not { StoredLength: > EmptyLength });
    }

    private static bool MixesLight(Layer layer) => layer.File is not { } file || MixedColors.AreLight(file);

    private static bool CanAdjust(Layer layer) => layer.Detail.Adjustment is { } adjustment && layer.File is { } file && ColorAdjusters.CanDraw(adjustment, file.ColorMode);

    private static string? FindFillReason(Layer layer) =>
        layer.GetFile() is { } file && MixedColors.AreLight(file) && layer.Detail.Fill is { } fill ? FillPixels.FindReason(fill, file) : "live content without stored pixels";

    private static IEnumerable<string> FindEffectReasons(Layer layer)
    {
        if (!layer.Detail.Features.HasFlag(LayerFeatures.Effects) || layer.GetFile() is not { } file) yield break;
        if (!MixedColors.AreLight(file))
        {
            yield return "layer effects in other colours than RGB and grey";
            yield break;
        }

        var effects = layer.Detail.GetEffects(file.Detail);
        foreach (var reason in effects.Select(effect => LayerEffects.FindReason(effect, file)).OfType<string>().Distinct()) yield return reason;
        if (effects.Count > 0 && layer.Detail.Features.HasFlag(LayerFeatures.BlendingRanges)) yield return "layer effects with blending ranges";
        if (effects.Count > 0 && layer is { IsGroup: true, BlendMode: BlendMode.PassThrough } && layer.GetLayers().Any(inner => inner.BlendMode is not (BlendMode.Normal or BlendMode.PassThrough)))
        {
            yield return "layer effects of a group whose layers mix with what lies below it";
        }
    }
}
