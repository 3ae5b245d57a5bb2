using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using LayerTools.Pixels.Compositing.Sinks;

namespace LayerTools.Pixels.Compositing;

/// <summary>Draws what is planned band by band, the rows of a band at the same time.</summary>
internal static class BandDrawing
{
    private const int MaxBandRows = 32;
    private const long BandBudget = 8 << 20;

    /// <summary>As many rows as fit the budget where most channels meet.</summary>
    public static int ChooseBandRows(DrawPlan plan)
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

    public static void Draw(DrawPlan plan, int bandRows, IRowSink sink, CompositeOptions options)
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
