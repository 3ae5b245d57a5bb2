using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Measures.Detail;

/// <summary>A rectangle of the canvas that fills a screen, without margin: as large as it can be with nothing of it cut off.</summary>
/// <param name="Box">The rectangle, canvas px.</param>
/// <param name="Screen">The screen.</param>
internal readonly record struct ScreenFit(Bounds Box, ScreenSize Screen)
{
    /// <summary>Screen pixels per canvas pixel.</summary>
    public double Ratio => Math.Min(Screen.Width / (double)Box.Width, Screen.Height / (double)Box.Height);

    public ScreenSide Side => (long)Screen.Width * Box.Height <= (long)Screen.Height * Box.Width ? ScreenSide.Width : ScreenSide.Height;

    /// <summary>What the screen shows, canvas px: the box with what lies around it, in whole pixels.</summary>
    public Bounds View
    {
        get
        {
            var (width, height) = (RoundUp(Screen.Width / Ratio), RoundUp(Screen.Height / Ratio));
            return Bounds.FromSize(Box.Left - ((width - Box.Width) / 2), Box.Top - ((height - Box.Height) / 2), width, height);
        }
    }

    /// <summary>The canvas on which the framing would have a wanted ratio: sides × ratio / wanted ratio, rounded up, the width to an even number.</summary>
    /// <param name="width">Columns of the canvas as it is, px.</param>
    /// <param name="height">Rows of the canvas as it is, px.</param>
    /// <param name="wanted">Screen pixels per canvas pixel, above 0.</param>
    public (long Width, long Height) FindCanvas(int width, int height, double wanted = 1)
    {
        var (columns, rows) = (RoundUpLong(width * Ratio / wanted), RoundUpLong(height * Ratio / wanted));
        return (columns + (columns % 2), rows);
    }

    // A ratio of 1/3 times 3 is to be 1, whatever the last bit says.
    private static long RoundUpLong(double length) => Math.Max(1, (long)Math.Ceiling(length - 1e-6));

    private static int RoundUp(double length) => (int)RoundUpLong(length);
}
