using System.Globalization;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Measures.Budget;

/// <summary>
/// Paints a page as a person looks at it: each part where it lies, on a checkerboard as large as its box, with its layer's number; its padding around it in
/// brown; what is free in dark grey. Large pages are shown smaller, by a power of two.
/// </summary>
internal sealed class PagePainter(TexturePages pages, PixelReader reader, CancellationToken cancellation)
{
    /// <summary>Most columns and rows of a picture, px.</summary>
    public const int LargestSide = 2048;

    private const int CheckSide = 8;
    private const int Dot = 3;

    private static readonly byte[] Free = [44, 46, 50];
    private static readonly byte[] Padding = [150, 92, 30];
    private static readonly byte[] LightCheck = [214, 214, 214];
    private static readonly byte[] DarkCheck = [188, 188, 188];

    private readonly int divisor = Math.Max(1, pages.Textures.PageSize / LargestSide);

    /// <summary>A page, counted from 0.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public Raster Paint(int page)
    {
        var side = pages.Textures.PageSize / divisor;
        var picture = new Raster(side, side);
        Fill(picture, new Bounds(0, 0, side, side), (_, _) => Free);
        var parts = pages.OnPage(page).Select(item => (item.Part, item.Place, Box: Shrink(item.Part.Painted, item.Place))).ToList();
        // Padding is shown even where it is less than a pixel of the picture, so that neighbours can be told apart.
        var padding = Math.Max(1, pages.Textures.Padding / divisor);
        foreach (var (_, _, box) in parts) Fill(picture, new Bounds(box.Left - padding, box.Top - padding, box.Right + padding, box.Bottom + padding), (_, _) => Padding);
        foreach (var (part, place, box) in parts)
        {
            cancellation.ThrowIfCancellationRequested();
            Fill(picture, box, (x, y) => ((x / CheckSide) + (y / CheckSide)) % 2 == 0 ? LightCheck : DarkCheck);
            Put(picture, Draw(part), box, place.Turned);
        }

        foreach (var (part, _, box) in parts) Number(picture, part.Layer, box);
        return picture;
    }

    private Bounds Shrink(Bounds painted, PackPlace place)
    {
        var (width, height) = place.Turned ? (painted.Height, painted.Width) : (painted.Width, painted.Height);
        return Bounds.FromSize(place.Left / divisor, place.Top / divisor, Math.Max(1, width / divisor), Math.Max(1, height / divisor));
    }

    private Raster Draw(PartSurvey part)
    {
        var options = new CompositeOptions { Subject = part.Layer, Plain = true, Area = part.Painted, Cancellation = cancellation };
        return new Compositor(pages.File, reader, options).RenderRaster(RoundUp(part.Painted.Width), RoundUp(part.Painted.Height));
    }

    private int RoundUp(int length) => (length + divisor - 1) / divisor;

    private static void Number(Raster picture, Layer layer, Bounds box)
    {
        var digits = layer.LayerNumber.ToString(CultureInfo.InvariantCulture);
        var dot = Dot;
        while (dot > 1 && (PixelDigits.Width(digits, dot) > box.Width || PixelDigits.Height(dot) > box.Height)) dot--;
        if (PixelDigits.Width(digits, dot) <= box.Width && PixelDigits.Height(dot) <= box.Height) PixelDigits.Draw(picture, digits, box.Left, box.Top, dot);
    }

    private static void Fill(Raster picture, Bounds box, Func<int, int, byte[]> color)
    {
        var seen = box.Intersect(new Bounds(0, 0, picture.Width, picture.Height));
        for (var y = seen.Top; y < seen.Bottom; y++)
        {
            var row = picture.Row(y);
            for (var x = seen.Left; x < seen.Right; x++)
            {
                color(x, y).CopyTo(row.Slice(4 * x));
                row[(4 * x) + 3] = byte.MaxValue;
            }
        }
    }

    /// <summary>Lays a part over what is there; turned clockwise, its first column becomes the first row read from the right.</summary>
    private static void Put(Raster picture, Raster part, Bounds box, bool turned)
    {
        var (width, height) = turned ? (part.Height, part.Width) : (part.Width, part.Height);
        for (var y = 0; y < Math.Min(height, box.Height); y++)
        {
            for (var x = 0; x < Math.Min(width, box.Width); x++)
            {
                var source = turned ? part.Row(part.Height - 1 - x).Slice(4 * y, 4) : part.Row(y).Slice(4 * x, 4);
                var target = picture.Row(box.Top + y).Slice(4 * (box.Left + x), 4);
                for (var channel = 0; channel < 3; channel++)
                {
                    target[channel] = (byte)(((source[channel] * source[3]) + (target[channel] * (byte.MaxValue - source[3])) + 127) / byte.MaxValue);
                }
            }
        }
    }
}
