using LayerTools.Measures.Cover;
using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Images;

/// <summary>Draws the surroundings of the place where a seam is least deep.</summary>
internal sealed class SeamDrawing
{
    /// <summary>Columns and rows that are shown, canvas px.</summary>
    private const int Side = 320;

    /// <summary>Columns and rows of the picture for one of the canvas.</summary>
    private const int Zoom = 2;

    private static readonly (byte Red, byte Green, byte Blue) Ground = (250, 250, 250);
    private static readonly (byte Red, byte Green, byte Blue) Neighbour = (233, 205, 160);
    private static readonly (byte Red, byte Green, byte Blue) Underneath = (44, 74, 134);
    private static readonly (byte Red, byte Green, byte Blue) Visible = (118, 168, 226);
    private static readonly (byte Red, byte Green, byte Blue) Hidden = (196, 214, 236);
    private static readonly (byte Red, byte Green, byte Blue) Open = (206, 24, 40);
    private static readonly (byte Red, byte Green, byte Blue) Deep = (30, 130, 60);
    private static readonly (byte Red, byte Green, byte Blue) End = (120, 120, 120);

    private readonly byte[] pixels = new byte[Side * Zoom * Side * Zoom * 4];
    private readonly int left;
    private readonly int top;

    /// <param name="cover">What was measured.</param>
    /// <param name="seam">A seam with a place.</param>
    /// <param name="cancellation">Stops the work.</param>
    public SeamDrawing(FigureCover cover, SeamCover seam, CancellationToken cancellation)
    {
        (left, top) = (seam.X!.Value - (Side / 2), seam.Y!.Value - (Side / 2));
        var parts = cover.Stack.ToList();
        var (part, front) = (parts.FindIndex(one => one.Layer.LayerNumber == seam.LayerNumber), parts.FindIndex(one => one.Layer.LayerNumber == seam.NeighbourNumber));
        DrawShapes(parts, part, parts[front].Coverage);
        var canvas = new Bounds(0, 0, cover.File.Width, cover.File.Height);
        var probe = new PartProbe(cover.File, parts, canvas, seam.WantedDepth, seam.MaximumDepth);
        DrawSeam(probe.FindSeam(part, front, cancellation), seam);
    }

    /// <summary>Writes it as PNG.</summary>
    public void Save(Stream target)
    {
        const int RowLength = Side * Zoom * 4;
        using var png = new PngPicture(Side * Zoom, Side * Zoom, ppi: null);
        for (var y = 0; y < Side * Zoom; y++) png.WriteRow(pixels.AsSpan(y * RowLength, RowLength));
        png.Save(target);
    }

    private void DrawShapes(List<CoverPart> parts, int part, CoverageMap neighbour)
    {
        var own = parts[part].Coverage;
        for (var y = top; y < top + Side; y++)
        {
            for (var x = left; x < left + Side; x++)
            {
                var color = (own[x, y], neighbour[x, y]) switch
                {
                    (true, true) => Underneath,
                    (false, true) => Neighbour,
                    (false, false) => Ground,
                    _ => parts.Take(part).Any(front => front.Hides && front.Coverage[x, y]) ? Hidden : Visible,
                };
                Fill(x, y, 0, color);
            }
        }
    }

    /// <summary>What opens comes last, since it is thicker and must not be drawn over.</summary>
    private void DrawSeam(IReadOnlyList<SeamPixel> seam, SeamCover record)
    {
        foreach (var pixel in seam) Fill(pixel.X, pixel.Y, 0, pixel.IsEnd(record.MaximumDepth) ? End : Deep);
        foreach (var pixel in SeamSummary.Count(seam, record.MaximumDepth).Where(pixel => pixel.Depth(record.MaximumDepth) < record.WantedDepth)) Fill(pixel.X, pixel.Y, Zoom, Open);
    }

    /// <summary>Fills the square of a canvas pixel, and so many pixels of the picture around it.</summary>
    private void Fill(int x, int y, int around, (byte Red, byte Green, byte Blue) color)
    {
        var (fromX, fromY) = (((x - left) * Zoom) - around, ((y - top) * Zoom) - around);
        for (var row = Math.Max(0, fromY); row < Math.Min(Side * Zoom, fromY + Zoom + (2 * around)); row++)
        {
            for (var column = Math.Max(0, fromX); column < Math.Min(Side * Zoom, fromX + Zoom + (2 * around)); column++)
            {
                var place = ((row * Side * Zoom) + column) * 4;
                (pixels[place], pixels[place + 1], pixels[place + 2], pixels[place + 3]) = (color.Red, color.Green, color.Blue, 255);
            }
        }
    }
}
