using System.Numerics;
using LayerTools.Model;

namespace LayerTools.Pixels.Compositing;

/// <summary>What one thread needs to draw a row: a short piece of source pixels, and rows for groups that are put together apart.</summary>
internal sealed class Workspace(int colorCount, Bounds area)
{
    /// <summary>Pixels worked on at a time: few enough to stay in the processor's nearest cache.</summary>
    public const int PieceLength = 128;

    private readonly Stack<PixelRow> free = new();

    /// <summary>The row that the whole picture is drawn into.</summary>
    public PixelRow Row { get; } = new(colorCount, area.Left, area.Width);

    public PixelRow Piece { get; } = new(colorCount, 0, PieceLength);

    public float[] MaskValues { get; } = new float[PieceLength + Vector<float>.Count];

    /// <summary>A row of any content, as wide as the picture; to be given back.</summary>
    public PixelRow Rent() => free.Count > 0 ? free.Pop() : new PixelRow(colorCount, area.Left, area.Width);

    public void Return(PixelRow row) => free.Push(row);
}
