using LayerTools.Figure.Drawing;
using LayerTools.Model;

namespace LayerTools.Figure.Parts;

/// <summary>One layer or group of the invented figure, before it is painted.</summary>
internal sealed class FigurePart
{
    /// <summary>A layer.</summary>
    public FigurePart(string name, Action<Brush> draw)
    {
        Name = name;
        Draw = draw;
    }

    /// <summary>A group of layers, front to back.</summary>
    public FigurePart(string name, params IEnumerable<FigurePart> children)
    {
        Name = name;
        Children = [.. children];
        Mode = BlendMode.PassThrough;
    }

    public string Name { get; }

    /// <summary>Paints the layer in figure coordinates; null for a group.</summary>
    public Action<Brush>? Draw { get; }

    /// <summary>Front to back.</summary>
    public List<FigurePart> Children { get; } = [];

    public bool IsGroup => Draw is null;

    /// <summary>Paints the reflection across the centre line instead.</summary>
    public bool IsReflected { get; init; }

    public bool IsClipped { get; init; }

    public bool IsHidden { get; init; }

    public BlendMode Mode { get; init; }

    /// <summary>0 to 1.</summary>
    public float Opacity { get; init; } = 1;

    public Mark Mark { get; init; }

    public FigureMask? Mask { get; init; }

    /// <summary>Whether a smaller figure does without it.</summary>
    public bool IsSpare { get; init; }

    /// <summary>Whether the layer is one colour, put on with a soft brush, as shading is.</summary>
    public bool IsWash { get; init; }

    /// <summary>How rough the paint is, in levels of 255; 0 is flat.</summary>
    public int Grain { get; init; } = 4;

    /// <summary>Layers in this part, groups not counted.</summary>
    public int CountLayers() => IsGroup ? Children.Sum(child => child.CountLayers()) : 1;
}
