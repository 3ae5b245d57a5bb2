using LayerTools.Model.Effects;
using LayerTools.Pixels.Compositing.Blending;

namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>An effect with what it is painted with and where. The planes are there while bands pass through the layer.</summary>
internal sealed class PlacedEffect(Effect effect, Blender blender, PixelSource paint)
{
    public Effect Effect { get; } = effect;

    public Blender Blender { get; } = blender;

    public PixelSource Paint { get; } = paint;

    /// <summary>Where it is seen behind or around the layer; null if nowhere.</summary>
    public ShapePlane? Outside { get; private set; }

    /// <summary>Where it is seen on the layer; null for everywhere or nowhere, as the effect has it.</summary>
    public ShapePlane? Inside { get; private set; }

    public void Place(ShapePlane shape)
    {
        switch (Effect)
        {
            case OutlineEffect outline:
                Outside = EffectShapes.OutlineOutside(shape, outline);
                Inside = EffectShapes.OutlineInside(shape, outline);
                break;
            case ShadeEffect { IsInward: true } shade:
                Inside = EffectShapes.Shade(shape, shade);
                break;
            case ShadeEffect shade:
                Outside = EffectShapes.Shade(shape, shade);
                break;
        }
    }

    public void Forget() => Outside = Inside = null;
}
