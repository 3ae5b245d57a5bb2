using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Compositing;

/// <summary>
/// Draws a file's layers together, from top to bottom in bands of rows. Memory goes with the length of a row and the number of layers that
/// meet in it, not with the size of the picture. Colours are mixed as the file encodes them.
/// </summary>
internal sealed class Compositor(LayerFile file, PixelReader reader, CompositeOptions? options = null)
{
    private const int MaxBandRows = 32;
    private const long BandBudget = 8 << 20;
    private readonly CompositeOptions options = options ?? new CompositeOptions();

    /// <summary>Draws the merged picture in the file's own depth.</summary>
    /// <param name="withAlpha">Whether an alpha channel follows the colours. The colours lie on white either way.</param>
    /// <param name="consume">Takes each band before the next is drawn.</param>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    public void Render(bool withAlpha, Action<MergedBand> consume)
    {
        using var plan = CreatePlan();
        if (plan.Area.IsEmpty) return;
        var maxRows = ChooseBandRows(plan);
        Draw(plan, maxRows, CreateMerged(plan, withAlpha, maxRows, consume));
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
        Draw(plan, ChooseBandRows(plan), small);
        return small.Raster;
    }

    /// <summary>Draws the merged picture as <see cref="Render"/> does and, from the same rows, a small one as <see cref="RenderRaster"/> does.</summary>
    public Raster RenderWithRaster(bool withAlpha, Action<MergedBand> consume, int maxWidth, int maxHeight)
    {
        using var plan = CreatePlan();
        if (plan.Area.IsEmpty) return new Raster(0, 0);
        var maxRows = ChooseBandRows(plan);
        var small = CreateSmall(plan, maxWidth, maxHeight);
        Draw(plan, maxRows, new SinkPair(small, CreateMerged(plan, withAlpha, maxRows, consume)));
        return small.Raster;
    }

    /// <summary>As many rows as fit the budget where most channels meet.</summary>
    private static int ChooseBandRows(DrawPlan plan)
    {
        var changes = new SortedDictionary<int, long>();
        foreach (var window in plan.Windows.Where(window => window.FirstRow < window.EndRow))
        {
            changes[window.FirstRow] = (changes.TryGetValue(window.FirstRow, out var begun) ? begun : 0) + window.RowBytes;
            changes[window.EndRow] = (changes.TryGetValue(window.EndRow, out var ended) ? ended : 0) - window.RowBytes;
        }

        var bytes = 0L;
        var most = 1L;
        foreach (var change in changes.Values)
        {
            bytes += change;
            most = Math.Max(most, bytes);
        }

        return (int)Math.Min(Math.Max(BandBudget / most, 1), Math.Min(MaxBandRows, plan.Area.Height));
    }

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

    private void Draw(DrawPlan plan, int bandRows, IRowSink sink)
    {
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = options.Threads ?? Environment.ProcessorCount, CancellationToken = options.Cancellation };
        var workspaces = new ConcurrentBag<Workspace>();
        for (var top = plan.Area.Top; top < plan.Area.Bottom; top += bandRows)
        {
            var bottom = Math.Min(top + bandRows, plan.Area.Bottom);
            Unwrap(() => Parallel.ForEach(plan.Windows.Where(window => window.Touches(top, bottom)), parallel, window => window.MoveTo(top, bottom)));
            sink.BeginBand(top - plan.Area.Top, bottom - top);
            Unwrap(() => Parallel.For(
                top,
                bottom,
                parallel,
                () => workspaces.TryTake(out var workspace) ? workspace : new Workspace(plan.ColorCount, plan.Area),
                (y, _, workspace) =>
                {
                    workspace.Row.Clear(plan.Area.Left, plan.Area.Right);
                    foreach (var step in plan.Steps) step.Draw(workspace.Row, y, workspace);
                    sink.Accept(y - plan.Area.Top, workspace.Row);
                    return workspace;
                },
                workspaces.Add));
            sink.EndBand();
            foreach (var window in plan.Windows) window.Release(bottom);
        }
    }

    /// <summary>An error keeps its own type, whichever thread met it.</summary>
    private static void Unwrap(Action work)
    {
        try
        {
            work();
        }
        catch (AggregateException errors)
        {
            ExceptionDispatchInfo.Capture(errors.InnerExceptions[0]).Throw();
        }
    }
}
