using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Measures.Detail;

/// <summary>
/// Finds what a camera looks at, from what is seen of the parts that are switched on: pixels with alpha above <see cref="PartSurvey.Faint"/>. Sketches, guides and backdrops are no
/// parts, and clipped layers show nothing beside what they are clipped to. Names are read by the vocabulary; a layer whose own name says nothing of a place goes by the groups around it.
/// </summary>
internal sealed class FigureFramings
{
    /// <summary>Belongs to parts that may be anywhere: shades, lines.</summary>
    private const string AnyZone = "anywhere";

    private static readonly string[] Face = ["head", "face", "eyebrow", "eyelid", "eye-highlight", "iris", "eye-white", "nose", "mouth", "mouth-inside"];

    private static readonly string[] HeadTop = ["hair-front", "hair-side", "headwear"];

    /// <summary>The first of these that is there tells where the chest is.</summary>
    private static readonly string[] Torso = ["torso", "torso-wear", "outerwear"];

    private readonly List<(string? Zone, Bounds Box)> parts;

    /// <param name="survey">All parts of the file.</param>
    /// <param name="nameOf">Takes the name of a layer apart.</param>
    public FigureFramings(FigureSurvey survey, Func<Layer, ParsedName> nameOf)
    {
        parts = [.. survey.Parts
            .Where(part => part.Role == LayerRole.Part && part.Layer is { EffectivelyVisible: true, Clipped: false, Kind: not LayerKind.Fill } && !part.Seen.IsEmpty)
            .Select(part => (FindZone(part.Layer, nameOf), part.Seen))];
    }

    /// <summary>The rectangle of a framing, canvas px; null if there is nothing of it.</summary>
    public Bounds? Find(FramingKind kind) => kind switch
    {
        FramingKind.Figure => NullIfEmpty(parts.Aggregate(Bounds.Empty, (all, part) => all.Union(part.Box))),
        FramingKind.Face => NullIfEmpty(In(Face)),
        FramingKind.Bust => FindBust(),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>The rectangle of a layer, or of the parts in a group; null if nothing is painted.</summary>
    public static Bounds? FindPart(FigureSurvey survey, Layer layer) =>
        NullIfEmpty(new[] { layer }.Concat(layer.GetLayers()).Aggregate(Bounds.Empty, (all, inner) => all.Union(survey.Find(inner)?.Seen ?? Bounds.Empty)));

    /// <summary>
    /// From the highest of face, hair and headwear down to the middle of the torso; without a torso half a face below the face. As wide as face, headwear, hair in
    /// front and torso together: long hair at the sides and arms may leave the picture.
    /// </summary>
    private Bounds? FindBust()
    {
        var face = In(Face);
        if (face.IsEmpty) return null;
        var torso = Torso.Select(zone => In([zone])).FirstOrDefault(box => !box.IsEmpty);
        var top = face.Union(In(HeadTop)).Top;
        var bottom = torso.IsEmpty ? face.Bottom + (face.Height / 2) : Math.Max(face.Bottom, torso.Top + (torso.Height / 2));
        var wide = face.Union(In(["hair-front", "headwear"])).Union(torso);
        return new Bounds(wide.Left, top, wide.Right, bottom);
    }

    private Bounds In(string[] zones) => parts.Where(part => Array.IndexOf(zones, part.Zone) >= 0).Aggregate(Bounds.Empty, (all, part) => all.Union(part.Box));

    private static string? FindZone(Layer layer, Func<Layer, ParsedName> nameOf)
    {
        for (var named = layer; named is not null; named = named.GetParent())
        {
            if (nameOf(named).Part is { } part && !string.Equals(part.Zone, AnyZone, StringComparison.Ordinal)) return part.Zone;
        }

        return null;
    }

    private static Bounds? NullIfEmpty(Bounds box) => box.IsEmpty ? null : box;
}
