using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Images;

/// <summary>Tells what a layer has that its picture and its entry in the manifest do not show.</summary>
internal static class ImageNotes
{
    private const int MostNamed = 3;

    private static readonly (LayerFeatures Feature, string Words)[] Features =
    [
        (LayerFeatures.Effects, "layer effects"),
        (LayerFeatures.BlendingRanges, "blending ranges"),
        (LayerFeatures.Knockout, "knockout"),
        (LayerFeatures.ChannelRestrictions, "channels left out of blending"),
        (LayerFeatures.ClippedApart, "clipped layers that blend one by one"),
        (LayerFeatures.Artboard, "artboard"),
    ];

    /// <summary>What is missing, in a few words each.</summary>
    public static IReadOnlyList<string> Find(LayerFile file, Layer layer)
    {
        var found = Features.Where(item => layer.Detail.Features.HasFlag(item.Feature)).Select(item => item.Words).ToList();
        if (layer.Kind == LayerKind.Adjustment) found.Insert(0, "adjustment layer");
        if (layer.IsGroup && LayerMasks.Find(layer) is { Stored: not null } or { Path: not null }) found.Insert(0, "mask of the group");
        if (!layer.IsGroup && layer.Kind != LayerKind.Adjustment && CompositorSupport.FindContentReason(layer) is { } reason) found.Insert(0, reason);
        return found;
    }

    /// <summary>What is lost of the file's colours: the pictures' encoder cannot write a profile, so that they will be taken for sRGB.</summary>
    public static IEnumerable<string> FindProfileNotes(LayerFile file)
    {
        if (file.ColorMode != ColorMode.Rgb || file.BitDepth == 32) yield break;
        using var reader = new PixelReader(file);
        if (reader.ReadProfile() is { IsSrgb: false }) yield return "The file's colour profile is not in the pictures; where colours must match exactly, assign it to them.";
    }

    /// <summary>A sentence for each thing that is missing somewhere.</summary>
    public static IEnumerable<string> Sum(IEnumerable<ImageEntry> entries) =>
        entries.SelectMany(entry => entry.Missing.Select(words => (Words: words, entry.Path))).GroupBy(item => item.Words, item => item.Path).Select(group =>
        {
            var paths = group.ToList();
            var more = paths.Count > MostNamed ? FormattableString.Invariant($" and {paths.Count - MostNamed} more") : string.Empty;
            return $"Not in the pictures: {group.Key} ({string.Join("; ", paths.Take(MostNamed))}{more}).";
        });
}
