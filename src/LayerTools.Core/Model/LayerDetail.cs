using LayerTools.Model.Adjustments;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;

namespace LayerTools.Model;

/// <summary>What a file format keeps with a layer beyond the model, in the format's own form.</summary>
internal abstract class LayerDetail
{
    /// <summary>What the layer uses beyond plain pixels.</summary>
    public abstract LayerFeatures Features { get; }

    /// <summary>What fills the layer where it is described and not painted; null for a layer of pixels.</summary>
    public virtual Fill? Fill => null;

    /// <summary>The layer's effects that are switched on, back to front; those before the first that lies on the layer lie behind it.</summary>
    /// <param name="file">The format's part of the file that the layer is in.</param>
    public virtual IReadOnlyList<Effect> GetEffects(FileDetail file) => [];

    /// <summary>What the layer does to the colours below it; null if nothing, or nothing that is understood.</summary>
    public virtual Adjustment? Adjustment => null;

    /// <summary>The path of the layer's vector mask, also of one that is switched off; null if it has none.</summary>
    public abstract VectorPath? VectorPath { get; }

    /// <summary>The sheet of a group that has one; null for all others, and where it cannot be understood.</summary>
    public virtual Artboard? Artboard => null;

    /// <summary>How the layer blends beyond mode and opacity.</summary>
    public abstract BlendingRules Blending { get; }

    /// <summary>What is drawn where the layer is described and not painted, in the format's own form; empty for a layer of pixels.</summary>
    public virtual IReadOnlyList<ByteSource> LiveContent => [];

    /// <summary>The layer's effects, in the format's own form; empty for a layer without any.</summary>
    public virtual IReadOnlyList<ByteSource> EffectContent => [];

    /// <summary>A copy for a new layer; ids are the model's business.</summary>
    public abstract LayerDetail Copy();

    /// <summary>Reflects paths across a vertical line.</summary>
    public abstract void Reflect(int doubledAxis, int canvasWidth);

    /// <summary>Moves paths when the canvas around them changes; whole pixels.</summary>
    public abstract void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight);

    /// <summary>A copy for a canvas of another size: what is told in pixels is told in new pixels.</summary>
    /// <param name="scale">The change.</param>
    /// <param name="notes">Gets what keeps its size, in words that follow the layer's path.</param>
    public abstract LayerDetail Rescale(CanvasScale scale, ICollection<string> notes);

    /// <summary>Drops the data behind live text, placed content, shapes and fills; the stored pixels stay and become plain.</summary>
    public abstract void DropLiveContent();

    /// <summary>A copy for a layer of plain pixels: name, id, mark and locks stay; live content, masks, effects and all other rules of how it is drawn are gone.</summary>
    /// <param name="keepsBlending">Whether ranges of brightness, excluded channels, knockout and fill opacity stay.</param>
    public abstract LayerDetail ToPlain(bool keepsBlending);

    /// <summary>A copy that is drawn as if nothing were below it: without ranges of brightness, excluded channels and knockout.</summary>
    /// <param name="keepsEffects">Whether the layer's effects stay.</param>
    public abstract LayerDetail WithoutBlending(bool keepsEffects);

    /// <summary>A copy of a group's without its masks; all else stays.</summary>
    public abstract LayerDetail WithoutMasks();

    /// <summary>A copy of a group's for a file of RGB with 8 bits, whose dividers have channels of their own.</summary>
    /// <param name="file">The format's part of that file.</param>
    public abstract LayerDetail ForColorsOf(FileDetail file);
}
