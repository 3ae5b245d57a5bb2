using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>How far two pictures of one canvas differ, over premultiplied colours and alpha, in steps of 1/255.</summary>
internal sealed class RigDifference(int width, int height)
{
    private const int CellSide = 32;
    private readonly int[] largest = new int[((width + CellSide - 1) / CellSide) * ((height + CellSide - 1) / CellSide)];
    private readonly int columns = (width + CellSide - 1) / CellSide;
    private long sum;

    /// <summary>The largest difference of a channel.</summary>
    public int Largest { get; private set; }

    /// <summary>The mean over all pixels and the four channels.</summary>
    public double Mean => sum / (4.0 * width * height);

    /// <summary>Notes one pixel's four differences, each 0 or more.</summary>
    public void Add(int x, int y, int red, int green, int blue, int alpha)
    {
        sum += red + green + blue + alpha;
        var most = Math.Max(Math.Max(red, green), Math.Max(blue, alpha));
        ref var cell = ref largest[((y / CellSide) * columns) + (x / CellSide)];
        if (most > cell) cell = most;
        if (most > Largest) Largest = most;
    }

    /// <summary>The largest difference near a rectangle, to 32 px.</summary>
    public int FindLargest(Bounds bounds)
    {
        var area = bounds.Intersect(new Bounds(0, 0, width, height));
        if (area.IsEmpty) return 0;
        var found = 0;
        for (var row = area.Top / CellSide; row <= (area.Bottom - 1) / CellSide; row++)
        {
            for (var column = area.Left / CellSide; column <= (area.Right - 1) / CellSide; column++) found = Math.Max(found, largest[(row * columns) + column]);
        }

        return found;
    }
}
