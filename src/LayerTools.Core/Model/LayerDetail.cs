namespace LayerTools.Model;

/// <summary>What a file format keeps with a layer beyond the model, in the format's own form.</summary>
internal abstract class LayerDetail
{
    /// <summary>What the layer uses beyond plain pixels.</summary>
    public abstract LayerFeatures Features { get; }

    /// <summary>A copy for a new layer; ids are the model's business.</summary>
    public abstract LayerDetail Copy();

    /// <summary>Reflects paths across a vertical line.</summary>
    public abstract void Reflect(int doubledAxis, int canvasWidth);

    /// <summary>Moves paths when the canvas around them changes; whole pixels.</summary>
    public abstract void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight);

    /// <summary>Drops the data behind live text, placed content, shapes and fills; the stored pixels stay and become plain.</summary>
    public abstract void DropLiveContent();
}
