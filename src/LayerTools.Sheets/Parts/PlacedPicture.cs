using LayerTools.Pixels;
using LayerTools.Pixels.Parts;

namespace LayerTools.Sheets.Parts;

/// <summary>A part in full strength over the faded figure, so that everyone sees where it belongs.</summary>
internal static class PlacedPicture
{
    private const double Fading = 0.32;
    private const int SmallSide = 20;
    private const int Gap = 5;

    /// <summary>Lays a part over the figure; both show the same frame.</summary>
    /// <param name="figure">The figure in full strength; null if it cannot be drawn.</param>
    /// <param name="part">The part on nothing.</param>
    public static Raster Compose(Raster? figure, Raster part)
    {
        var result = new Raster(part.Width, part.Height);
        for (var i = 0; i < result.Pixels.Length; i += 4)
        {
            if (figure is not null) Fade(figure.Pixels, result.Pixels, i);
            LayOver(part.Pixels, result.Pixels, i);
        }

        if (FindSmall(part) is { } box) PaintBox(result, box);
        return result;
    }

    /// <summary>Grey of the same lightness, mostly transparent.</summary>
    private static void Fade(byte[] from, byte[] to, int i)
    {
        var light = LinearLight.Amounts;
        var grey = LinearLight.Encode(((0.2126 * light[from[i]]) + (0.7152 * light[from[i + 1]]) + (0.0722 * light[from[i + 2]])) / 65535);
        to[i] = to[i + 1] = to[i + 2] = grey;
        to[i + 3] = (byte)(from[i + 3] * Fading + 0.5);
    }

    /// <summary>Simple alpha compositing, 'source over' (W3C Compositing and Blending Level 1), on colours that are not premultiplied.</summary>
    private static void LayOver(byte[] from, byte[] to, int i)
    {
        var (above, below) = (from[i + 3] / 255.0, to[i + 3] / 255.0 * (1 - from[i + 3] / 255.0));
        if (above <= 0) return;
        var alpha = above + below;
        for (var channel = i; channel < i + 3; channel++) to[channel] = (byte)(((from[channel] * above) + (to[channel] * below)) / alpha + 0.5);
        to[i + 3] = (byte)(255 * alpha + 0.5);
    }

    /// <summary>The box of what can be seen of a part, if it is so small that eyes would search for it.</summary>
    private static (int Left, int Top, int Right, int Bottom)? FindSmall(Raster part)
    {
        var (left, top, right, bottom) = (int.MaxValue, int.MaxValue, -1, -1);
        for (var y = 0; y < part.Height; y++)
        {
            var row = part.Row(y);
            for (var x = 0; x < part.Width; x++)
            {
                if (row[4 * x + 3] == 0) continue;
                (left, right, top, bottom) = (Math.Min(left, x), Math.Max(right, x), Math.Min(top, y), Math.Max(bottom, y));
            }
        }

        return right >= 0 && right - left < SmallSide && bottom - top < SmallSide ? (left - Gap, top - Gap, right + Gap, bottom + Gap) : null;
    }

    /// <summary>A black box inside a white one: one of the two shows on any ground.</summary>
    private static void PaintBox(Raster picture, (int Left, int Top, int Right, int Bottom) box)
    {
        for (var y = box.Top - 1; y <= box.Bottom + 1; y++)
        {
            for (var x = box.Left - 1; x <= box.Right + 1; x++)
            {
                if (x < 0 || y < 0 || x >= picture.Width || y >= picture.Height) continue;
                var depth = Math.Min(Math.Min(x - box.Left, box.Right - x), Math.Min(y - box.Top, box.Bottom - y));
                if (depth > 0) continue;
                var value = depth < 0 ? byte.MaxValue : byte.MinValue;
                var pixel = picture.Row(y).Slice(4 * x, 4);
                pixel.Fill(value);
                pixel[3] = byte.MaxValue;
            }
        }
    }
}
