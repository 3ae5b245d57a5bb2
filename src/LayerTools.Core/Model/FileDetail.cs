using LayerTools.Model.Fills;

namespace LayerTools.Model;

/// <summary>What a file format keeps with a file beyond the model, in the format's own form.</summary>
internal abstract class FileDetail
{
    /// <summary>Ids that the file uses for things that are no layers of the model.</summary>
    public abstract IEnumerable<int> HiddenIds { get; }

    /// <summary>A pattern that the file holds; null where it has none of that name, or none that can be drawn.</summary>
    public virtual Pattern? FindPattern(string id) => null;

    /// <summary>The embedded colour profile (ICC.1); null if there is none.</summary>
    public virtual ByteSource? ColorProfile => null;

    /// <summary>The palette of a file of indexed colours: 256 reds, 256 greens, 256 blues; null if there is none.</summary>
    public virtual ByteSource? Palette => null;

    /// <summary>The colour of the palette that stands for transparency; null if there is none.</summary>
    public virtual int? TransparentIndex => null;

    /// <summary>Moves the file's own paths and pictures when the canvas changes; whole pixels.</summary>
    public abstract void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight);

    /// <summary>A new, plain layer's detail.</summary>
    public abstract LayerDetail CreateLayerDetail(LayerKind kind);
}
