using System.Text.Json.Serialization;
using LayerTools.Model;

namespace LayerTools.Images;

/// <summary>What the manifest says about one layer or group.</summary>
/// <param name="Order">Place in the flattened tree of the file, 1 = front-most.</param>
/// <param name="Path">Names from the outermost group down.</param>
/// <param name="Group">The <see cref="Order"/> of the group around it; null at the outermost level.</param>
/// <param name="Kind">What it is made of.</param>
/// <param name="Image">File name of its picture; null if it has none.</param>
/// <param name="Left">Where the picture's left edge lies, canvas px.</param>
/// <param name="Top">Where its top edge lies, canvas px.</param>
/// <param name="Width">Columns of the picture, px.</param>
/// <param name="Height">Rows of the picture, px.</param>
/// <param name="Opacity">0 to 100 %, exact to a thousandth.</param>
/// <param name="FillOpacity">0 to 100 %, which most blend modes take as a second opacity.</param>
/// <param name="BlendMode">How it mixes with what lies below.</param>
/// <param name="Clipped">Whether it is seen only where the next layer behind it that is not clipped is.</param>
/// <param name="Visible">Whether it is switched on.</param>
/// <param name="Shown">Whether it and all groups around it are.</param>
/// <param name="Missing">What the picture lacks that the file has.</param>
internal sealed record ImageEntry(
    int Order,
    string Path,
    int? Group,
    [property: JsonConverter(typeof(JsonStringEnumConverter))] LayerKind Kind,
    string? Image,
    int Left,
    int Top,
    int Width,
    int Height,
    double Opacity,
    double FillOpacity,
    [property: JsonConverter(typeof(JsonStringEnumConverter))] BlendMode BlendMode,
    bool Clipped,
    bool Visible,
    bool Shown,
    IReadOnlyList<string> Missing)
{
    /// <summary>The entry of a layer.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="image">Its picture's file name, or null.</param>
    /// <param name="area">The rectangle of its picture; empty if there is none.</param>
    /// <param name="missing">What the picture lacks.</param>
    public static ImageEntry Of(Layer layer, string? image, Bounds area, IReadOnlyList<string> missing) => new(
        layer.LayerNumber,
        WellFormed.Of(layer.LayerPath),
        layer.GetParent()?.LayerNumber,
        layer.Kind,
        image,
        area.Left,
        area.Top,
        area.Width,
        area.Height,
        ToPercent(layer.OpacityByte),
        ToPercent(layer.FillOpacity),
        layer.BlendMode,
        layer.Clipped,
        layer.Visible,
        layer.EffectivelyVisible,
        missing);

    private static double ToPercent(byte opacity) => Math.Round(opacity * 100.0 / byte.MaxValue, 3);
}
