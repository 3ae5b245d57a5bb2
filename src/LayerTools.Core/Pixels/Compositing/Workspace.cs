using System.Numerics;
using LayerTools.Model;
using LayerTools.Pixels.Compositing.Masks;
using LayerTools.Pixels.Compositing.Steps;

namespace LayerTools.Pixels.Compositing;

/// <summary>What one thread needs to draw a row: a short piece of source pixels, and rows for groups that are put together apart.</summary>
internal sealed class Workspace(int colorCount, Bounds area)
{
    /// <summary>Pixels worked on at a time: few enough to stay in the processor's nearest cache.</summary>
    public const int PieceLength = 128;

    private readonly Stack<PixelRow> free = new();
    private readonly Dictionary<PathFill, PathRow> pathRows = [];
    private readonly Dictionary<BackdropSlot, PixelRow> backdrops = [];

    /// <summary>The row that the whole picture is drawn into.</summary>
    public PixelRow Row { get; } = new(colorCount, area.Left, area.Width);

    public PixelRow Piece { get; } = new(colorCount, 0, PieceLength);

    /// <summary>Room for a piece of the target before something is mixed into it.</summary>
    public PixelRow Before { get; } = new(colorCount, 0, PieceLength);

    /// <summary>A premultiplied piece of the picture to try something on.</summary>
    public PixelRow Trial { get; } = new(colorCount, 0, PieceLength);

    /// <summary>A premultiplied piece of the picture as it will be.</summary>
    public PixelRow Result { get; } = new(colorCount, 0, PieceLength);

    /// <summary>A layer's own colours with what is mixed into them.</summary>
    public PixelRow Within { get; } = new(colorCount, 0, PieceLength);

    /// <summary>How much of each pixel a layer fills.</summary>
    public float[] Shape { get; } = new float[PieceLength + Vector<float>.Count];

    /// <summary>How much of each pixel nothing fills yet.</summary>
    public float[] Free { get; } = new float[PieceLength + Vector<float>.Count];

    public float[] MaskValues { get; } = new float[PieceLength + Vector<float>.Count];

    /// <summary>A row of any content, as wide as the picture; to be given back.</summary>
    public PixelRow Rent() => free.Count > 0 ? free.Pop() : new PixelRow(colorCount, area.Left, area.Width);

    public void Return(PixelRow row) => free.Push(row);

    /// <summary>The row that is kept in a slot.</summary>
    public PixelRow GetBackdrop(BackdropSlot slot)
    {
        if (!backdrops.TryGetValue(slot, out var row)) backdrops[slot] = row = new PixelRow(colorCount, area.Left, area.Width);
        return row;
    }

    /// <summary>A path's coverage of a whole row, filled once for all pieces of it.</summary>
    public float[] GetPathRow(PathFill fill, int y)
    {
        if (!pathRows.TryGetValue(fill, out var row)) pathRows[fill] = row = new PathRow(new float[area.Width]);
        if (row.Y != y)
        {
            fill.Fill(y, area.Left, row.Coverage);
            row.Y = y;
        }

        return row.Coverage;
    }

    private sealed class PathRow(float[] coverage)
    {
        public float[] Coverage { get; } = coverage;

        public int? Y { get; set; }
    }
}
