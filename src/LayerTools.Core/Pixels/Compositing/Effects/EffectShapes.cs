using LayerTools.Model.Effects;

namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>What effects make of a layer's shape: where each of them is seen, and how strongly.</summary>
internal static class EffectShapes
{
    /// <summary>How far beyond a layer an effect reaches, px.</summary>
    public static int GetReach(Effect effect) => effect switch
    {
        OutlineEffect { Place: not OutlinePlace.Inside } outline => Clamp(Math.Ceiling(outline.Size) + 1),
        ShadeEffect { IsInward: false } shade => Clamp(Math.Ceiling(shade.Size + Math.Max(Math.Abs(shade.Right), Math.Abs(shade.Down))) + 2),
        _ => 0,
    };

    /// <summary>How far away from a pixel the shape has to be known for it, px.</summary>
    public static int GetNeed(Effect effect) => effect switch
    {
        OutlineEffect outline => Clamp(Math.Ceiling(outline.Size) + 2),
        ShadeEffect shade => Clamp(Math.Ceiling(shade.Size + Math.Max(Math.Abs(shade.Right), Math.Abs(shade.Down))) + 2),
        _ => 0,
    };

    /// <summary>How far beyond the layer the rectangle reaches that an outline's gradient is fitted into, px.</summary>
    public static double GetGradientReach(OutlineEffect outline) => outline.Place switch
    {
        OutlinePlace.Inside => 0,
        OutlinePlace.Centre => outline.Size / 2,
        _ => outline.Size,
    };

    /// <summary>The part of an outline that lies outside of the shape; null if none can.</summary>
    public static ShapePlane? OutlineOutside(ShapePlane shape, OutlineEffect outline)
    {
        if (outline.Place == OutlinePlace.Inside) return null;
        return FindGrowth(shape, GetWidth(outline));
    }

    /// <summary>The part of an outline that lies inside the shape; null if none can.</summary>
    public static ShapePlane? OutlineInside(ShapePlane shape, OutlineEffect outline)
    {
        if (outline.Place == OutlinePlace.Outside) return null;
        return FindGrowth(shape.Invert(), GetWidth(outline));
    }

    /// <summary>The softened shape of a shade or halo. That the solid part of its size is grown and only the rest softened is from memory.</summary>
    public static ShapePlane Shade(ShapePlane shape, ShadeEffect shade)
    {
        var outside = shade.IsInward ? (ushort)ShapePlane.Full : (ushort)0;
        var solid = Math.Round(shade.Size * shade.Spread, MidpointRounding.AwayFromZero);
        var softened = (shade.IsInward ? shape.Invert() : shape).Shift(RoundToPixel(shade.Right), RoundToPixel(shade.Down), outside);
        softened = ShapeBlur.Blur(ShapeGrowth.Grow(softened, solid), shade.Size - solid, outside);
        if (shade.Strength == 1 && !shade.IsFromCentre) return softened;
        var strong = new ShapePlane(shape.Bounds);
        for (var i = 0; i < strong.Samples.Length; i++)
        {
            var value = Math.Min(ShapePlane.Full, (int)((softened.Samples[i] * shade.Strength) + 0.5));
            strong.Samples[i] = (ushort)(shade.IsFromCentre ? ShapePlane.Full - value : value);
        }

        return strong;
    }

    /// <summary>How much of the outline lies on one side of the edge, px.</summary>
    private static double GetWidth(OutlineEffect outline) => outline.Place == OutlinePlace.Centre ? outline.Size / 2 : outline.Size;

    private static int RoundToPixel(double distance) => Clamp(Math.Round(distance, MidpointRounding.AwayFromZero));

    private static int Clamp(double value) => (int)Math.Max(-short.MaxValue, Math.Min(short.MaxValue, value));

    /// <summary>What growing a shape adds to it.</summary>
    private static ShapePlane FindGrowth(ShapePlane shape, double distance)
    {
        var grown = ShapeGrowth.Grow(shape, distance);
        var added = ReferenceEquals(grown, shape) ? new ShapePlane(shape.Bounds) : grown;
        for (var i = 0; i < added.Samples.Length; i++) added.Samples[i] = (ushort)Math.Max(0, grown.Samples[i] - shape.Samples[i]);
        return added;
    }
}
