using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Measures.Symmetry;

/// <summary>Draws parts of a file, and the figure that its visible parts make, into memory. Can be used from several threads.</summary>
internal sealed class PartPainter(LayerFile file, ReadLimits limits, CancellationToken cancellation) : IDisposable
{
    private const long LongestArray = 0x7FFFFFC7;

    private readonly PixelReader reader = new(file, limits);

    private Bounds Canvas => new(0, 0, file.Width, file.Height);

    /// <summary>The rectangle that drawing a part takes, canvas px.</summary>
    public Bounds FindArea(Layer layer) => DescribedContent.IsLiveFill(layer) ? Canvas : layer.Bounds.IsEmpty ? Bounds.Empty : layer.Bounds;

    /// <summary>A part's own pixels, cut by its masks, without its opacity and effects.</summary>
    /// <exception cref="LayeredFileException">A channel is damaged, the part is too large, or the file changed on disk.</exception>
    public PaintedPart Draw(Layer layer)
    {
        cancellation.ThrowIfCancellationRequested();
        var area = FindArea(layer);

        // What no mask cuts need not go through the compositor, which is several times slower.
        return !DescribedContent.IsLiveFill(layer) && LayerMasks.Find(layer) is { Stored: null, Path: null }
            ? new PaintedPart(reader.ReadRaster(layer), area.Left, area.Top)
            : Draw(new CompositeOptions { Subject = layer, Plain = true, Area = area, Threads = 1, Cancellation = cancellation }, area, $"layer '{layer.LayerPath}'");
    }

    /// <summary>All parts of the figure as they are seen, as large as the canvas.</summary>
    /// <param name="isShown">Which layers and groups are switched on.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the canvas is too large, or the file changed on disk.</exception>
    public PaintedPart DrawFigure(Func<Layer, bool> isShown) => Draw(new CompositeOptions { Shows = isShown, Area = Canvas, Cancellation = cancellation }, Canvas, "layers");

    /// <summary>The same, small: in its own proportions and never enlarged.</summary>
    /// <param name="isShown">Which layers and groups are switched on.</param>
    /// <param name="maxWidth">Most columns, px.</param>
    /// <param name="maxHeight">Most rows, px.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public Raster DrawSmallFigure(Func<Layer, bool> isShown, int maxWidth, int maxHeight) =>
        new Compositor(file, reader, new CompositeOptions { Shows = isShown, Area = Canvas, Cancellation = cancellation }).RenderRaster(maxWidth, maxHeight);

    public void Dispose() => reader.Dispose();

    private PaintedPart Draw(CompositeOptions options, Bounds area, string section)
    {
        var bytes = 4 * (((double)area.Right - area.Left) * ((double)area.Bottom - area.Top));
        if (bytes > Math.Min((long)limits.MemoryMegabytes << 20, LongestArray))
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, section, -1,
                FormattableString.Invariant($"Its pixels take {Math.Ceiling(bytes / (1 << 20)):0} MB. The limit is {limits.MemoryMegabytes} MB."),
                FormattableString.Invariant($"Raise {nameof(ReadLimits.MemoryMegabytes)} (at most 2047), or choose smaller parts."));
        }

        return new PaintedPart(new Compositor(file, reader, options).RenderWhole(), area.Left, area.Top);
    }
}
