using LayerTools.Pixels;

namespace LayerTools.Sheets.Pages;

/// <summary>Finds pictures that cannot be told from what they stand on, such as a grey backdrop on grey.</summary>
internal static class TileMatch
{
    private const int InvisibleStep = 2;

    /// <summary>Whether no pixel stands out from the tile by more than an eye can see.</summary>
    public static bool IsLost(Raster picture, Rgb tile)
    {
        var pixels = picture.Pixels;
        for (var i = 0; i < pixels.Length; i += 4)
        {
            var step = Math.Max(Math.Abs(pixels[i] - tile.R), Math.Max(Math.Abs(pixels[i + 1] - tile.G), Math.Abs(pixels[i + 2] - tile.B)));
            if (step * pixels[i + 3] > InvisibleStep * 255) return false;
        }

        return true;
    }
}
