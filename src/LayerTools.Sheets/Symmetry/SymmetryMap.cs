using LayerTools.Measures.Symmetry;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Symmetry;

/// <summary>
/// Paints where the halves of a figure differ. Coverage and colour are told apart by their patterns and their brightness, so that the picture can be read in grey:
/// coverage is hatched, colour is plain, and the more it differs the darker it is.
/// </summary>
internal static class SymmetryMap
{
    /// <summary>ΔE00 from which colours count as slightly, visibly, strongly and wholly different. Below the first hardly anybody sees a difference across a figure (invented limits).</summary>
    public static readonly IReadOnlyList<int> Steps = [2, 5, 10, 20];

    /// <summary>The least opacity that counts as covered: half.</summary>
    private const int Covering = 128;

    /// <summary>A picture of the figure with its differences.</summary>
    /// <param name="figure">The figure; its axis is half its width.</param>
    /// <param name="zoom">Columns and rows of the picture for each pixel.</param>
    public static Raster Paint(Raster figure, int zoom)
    {
        var picture = new Raster(figure.Width * zoom, figure.Height * zoom);
        var colors = new ColorPairs();
        for (var y = 0; y < figure.Height; y++)
        {
            for (var x = 0; x < figure.Width; x++)
            {
                var pixel = figure.Row(y).Slice(4 * x, 4);
                var cell = Tell(pixel, figure.Row(y).Slice(4 * (figure.Width - 1 - x), 4), colors);
                for (var i = 0; i < zoom * zoom; i++) Put(picture, (x * zoom) + (i % zoom), (y * zoom) + (i / zoom), SymmetryInk.Choose(cell, Brighten(pixel), (x * zoom) + (i % zoom), (y * zoom) + (i / zoom)));
            }
        }

        return picture;
    }

    /// <summary>A patch of what stands for a cell.</summary>
    public static Raster PaintPatch(SymmetryCell cell, int width, int height)
    {
        var patch = new Raster(width, height);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++) Put(patch, x, y, SymmetryInk.Choose(cell, SymmetryInk.Faded(0.4), x, y));
        }

        return patch;
    }

    /// <summary>An upright line: dashes, with light on both sides so that it is seen on everything.</summary>
    /// <param name="picture">What it is painted on.</param>
    /// <param name="x">Its place, px.</param>
    /// <param name="dash">Length of a dash and of a gap, px.</param>
    public static void PaintLine(Raster picture, double x, int dash)
    {
        const int Halo = 2;
        var middle = (int)Math.Round(x - 1);
        for (var y = 0; y < picture.Height; y++)
        {
            for (var column = middle - Halo; column < middle + 2 + Halo; column++)
            {
                if (column < 0 || column >= picture.Width || (y / dash) % 2 != 0) continue;
                Put(picture, column, y, column >= middle && column < middle + 2 ? SymmetryInk.Line : Rgb.White);
            }
        }
    }

    internal static SymmetryCell Tell(ReadOnlySpan<byte> pixel, ReadOnlySpan<byte> across, ColorPairs colors)
    {
        var (here, there) = (pixel[3] >= Covering, across[3] >= Covering);
        if (here != there) return here ? SymmetryCell.Extra : SymmetryCell.Missing;
        if (!here) return SymmetryCell.Clear;
        var difference = colors.Measure(pixel, across);
        return SymmetryCell.Same + Steps.Count(step => difference >= step);
    }

    private static Rgb Brighten(ReadOnlySpan<byte> pixel) => SymmetryInk.Faded(((0.2126 * pixel[0]) + (0.7152 * pixel[1]) + (0.0722 * pixel[2])) / byte.MaxValue);

    private static void Put(Raster picture, int x, int y, Rgb color)
    {
        var pixel = picture.Row(y).Slice(4 * x, 4);
        (pixel[0], pixel[1], pixel[2], pixel[3]) = (color.R, color.G, color.B, byte.MaxValue);
    }
}
