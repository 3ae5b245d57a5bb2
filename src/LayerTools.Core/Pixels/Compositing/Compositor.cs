using LayerTools.Model;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing.Sinks;

namespace LayerTools.Pixels.Compositing;

/// <summary>
/// Draws a file's layers together, from top to bottom in bands of rows. Memory goes with the length of a row and the number of layers that
/// meet in it, not with the size of the picture. Colours are mixed as the file encodes them.
/// </summary>
internal sealed class Compositor(LayerFile file, PixelReader reader, CompositeOptions? options = null)
{
    private readonly CompositeOptions options = options ?? new CompositeOptions();

    /// <summary>Draws the merged picture in the file's own depth.</summary>
    /// <param name="withAlpha">Whether an alpha channel follows the colours. The colours lie on white either way.</param>
    /// <param name="consume">Takes each band before the next is drawn.</param>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    public void Render(bool withAlpha, Action<MergedBand> consume)
    {
        using var plan = CreatePlan();
        if (plan.Area.IsEmpty) return;
        var maxRows = BandDrawing.ChooseBandRows(plan);
        BandDrawing.Draw(plan, maxRows, CreateMerged(plan, withAlpha, maxRows, consume), options);
    }

    /// <summary>Draws the picture small: in its own proportions, at most as large as given, never enlarged.</summary>
    /// <param name="maxWidth">Most columns, px, at least 1.</param>
    /// <param name="maxHeight">Most rows, px, at least 1.</param>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    public Raster RenderRaster(int maxWidth, int maxHeight)
    {
        using var plan = CreatePlan();
        if (plan.Area.IsEmpty) return new Raster(0, 0);
        var small = CreateSmall(plan, maxWidth, maxHeight);
        BandDrawing.Draw(plan, BandDrawing.ChooseBandRows(plan), small, options);
        return small.Raster;
    }

    /// <summary>Draws the merged picture as <see cref="Render"/> does and, from the same rows, a small one as <see cref="RenderRaster"/> does.</summary>
    public Raster RenderWithRaster(bool withAlpha, Action<MergedBand> consume, int maxWidth, int maxHeight)
    {
        using var plan = CreatePlan();
        if (plan.Area.IsEmpty) return new Raster(0, 0);
        var maxRows = BandDrawing.ChooseBandRows(plan);
        var small = CreateSmall(plan, maxWidth, maxHeight);
        BandDrawing.Draw(plan, maxRows, new SinkPair(small, CreateMerged(plan, withAlpha, maxRows, consume)), options);
        return small.Raster;
    }

    /// <summary>Draws the picture as RGB and alpha of 8 bits, not premultiplied and on nothing: four channels, whatever the file's colours and depth.</summary>
    /// <param name="consume">Takes each band before the next is drawn; rows count from the top of the drawn area.</param>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    public void RenderStraight(Action<MergedBand> consume)
    {
        using var plan = CreatePlan();
        if (plan.Area.IsEmpty) return;
        var maxRows = BandDrawing.ChooseBandRows(plan);
        BandDrawing.Draw(plan, maxRows, new StraightSink(CreatePacker(plan.Area.Width), plan.Area.Width, maxRows, consume), options);
    }

    /// <summary>The smallest rectangle of the drawn area, canvas px, outside of which nothing is drawn.</summary>
    public Bounds FindReach()
    {
        using var plan = CreatePlan();
        return plan.Steps.Aggregate(Bounds.Empty, (all, step) => all.Union(step.Area));
    }

    /// <summary>Draws the picture at its own size, as RGBA on nothing.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The picture needs more than 2 GB.</exception>
    public Raster RenderWhole()
    {
        RasterSink? sink = null;
        RenderRows((width, height) => sink = new RasterSink(CreatePacker(width), width, height));
        return sink?.Raster ?? new Raster(0, 0);
    }

    /// <summary>Draws the picture into a sink, which gets the rows premultiplied and in the file's own colours.</summary>
    /// <param name="create">Makes the sink for a picture of that many columns and rows, px; called once, and not for an empty picture.</param>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    public void RenderRows(Func<int, int, IRowSink> create)
    {
        using var plan = CreatePlan();
        if (!plan.Area.IsEmpty) BandDrawing.Draw(plan, BandDrawing.ChooseBandRows(plan), create(plan.Area.Width, plan.Area.Height), options);
    }

    private RgbaPacker CreatePacker(int width) => new(file, reader.CreateConverter(), width);

    private MergedSink CreateMerged(DrawPlan plan, bool withAlpha, int maxRows, Action<MergedBand> consume) =>
        new(Whites.Of(file), withAlpha, plan.Area.Width, file.BitDepth, maxRows, consume);

    private ShrinkSink CreateSmall(DrawPlan plan, int maxWidth, int maxHeight)
    {
        if (maxWidth < 1) throw new ArgumentOutOfRangeException(nameof(maxWidth));
        if (maxHeight < 1) throw new ArgumentOutOfRangeException(nameof(maxHeight));
        return new ShrinkSink(reader.CreateConverter(), plan.Area.Width, plan.Area.Height, maxWidth, maxHeight);
    }

    private DrawPlan CreatePlan()
    {
        CompositorSupport.EnsureColors(file);
        return DrawPlan.Create(file, reader, options);
    }
}
