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

    /// <summary>How many channels the file has beside colours and transparency, such as saved selections.</summary>
    public virtual int ExtraChannelCount => 0;

    /// <summary>The palette of a file of indexed colours: 256 reds, 256 greens, 256 blues; null if there is none.</summary>
    public virtual ByteSource? Palette => null;

    /// <summary>The colour of the palette that stands for transparency; null if there is none.</summary>
    public virtual int? TransparentIndex => null;

    /// <summary>Moves the file's own paths and pictures when the canvas changes; whole pixels.</summary>
    public abstract void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight);

    /// <summary>The same for a canvas of another size, with the merged picture resampled.</summary>
    /// <param name="file">The file as it is.</param>
    /// <param name="scale">The change.</param>
    /// <param name="filter">How the merged picture is resampled.</param>
    /// <param name="spool">Where the new picture is kept.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="Errors.LayeredFileException">The merged picture is damaged, or the file changed on disk.</exception>
    public abstract FileDetail Rescale(LayerFile file, CanvasScale scale, ResampleFilter filter, SpoolFile spool, CancellationToken cancellation);

    /// <summary>
    /// The same for a file of RGB with 8 bits: what describes the colours of another mode or depth is left out, and the merged picture is a white one
    /// unless it has to stand in for layers that cannot be drawn.
    /// </summary>
    /// <param name="file">The file as it is.</param>
    /// <param name="keepsPicture">Whether the merged picture is kept, turned to RGB, instead of a white one.</param>
    /// <param name="spool">Where a new picture is kept.</param>
    /// <exception cref="Errors.LayeredFileException">The merged picture is damaged or cannot be turned to RGB, or the file changed on disk.</exception>
    public abstract FileDetail ToEightBitRgb(LayerFile file, bool keepsPicture, SpoolFile spool);

    /// <summary>A new, plain layer's detail.</summary>
    public abstract LayerDetail CreateLayerDetail(LayerKind kind);
}
