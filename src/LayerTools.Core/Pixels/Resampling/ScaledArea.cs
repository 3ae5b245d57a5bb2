using LayerTools.Model;

namespace LayerTools.Pixels.Resampling;

/// <summary>A rectangle on the old canvas, the one it becomes on the new canvas, and the weights that lead from one to the other.</summary>
internal sealed class ScaledArea
{
    public ScaledArea(CanvasScale scale, ResampleFilter filter, Bounds old, Bounds @new)
    {
        Old = old;
        New = @new;
        // What ends at the edge of the canvas is cut off there and would go on; it must not become see-through along the edge.
        Across = AxisTaps.Create(filter, scale.OldWidth, scale.NewWidth, @new.Left, @new.Right, EdgeAt(old.Left, 0), EdgeAt(old.Right, scale.OldWidth));
        Down = AxisTaps.Create(filter, scale.OldHeight, scale.NewHeight, @new.Top, @new.Bottom, EdgeAt(old.Top, 0), EdgeAt(old.Bottom, scale.OldHeight));
        for (var (oldest, row) = (@new.Top, @new.Top); row < @new.Bottom; row++)
        {
            while (Down.EndOf(oldest) <= Down.StartOf(row)) oldest++;
            RowsAtOnce = Math.Max(RowsAtOnce, row - oldest + 1);
        }
    }

    public Bounds Old { get; }

    public Bounds New { get; }

    public AxisTaps Across { get; }

    public AxisTaps Down { get; }

    /// <summary>How many new rows one old row can be part of, at most.</summary>
    public int RowsAtOnce { get; }

    private static int? EdgeAt(int end, int edge) => end == edge ? edge : null;
}
