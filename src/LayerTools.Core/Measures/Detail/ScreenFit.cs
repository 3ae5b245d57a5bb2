using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Measures.Detail;

/// <summary>A rectangle of the canvas that fills a screen, without margin: as large as it can be with nothing of it cut off.</summary>
/// <param name="Box">The rectangle, canvas px.</param>
/// <param name="Screen">The screen.</param>
internal readonly record struct ScreenFit(Bounds Box, ScreenSize Screen)
{
    /// <summary>A third times 3 is to be 1, whatever the last bit says.</summary>
    private const double Slack = 1e-6;

    /// <summary>Screen pixels per canvas pixel.</summary>
    public double Ratio => Math.Min(Screen.Width / (double)Box.Width, Screen.Height / (double)Box.Height);

    public ScreenSide Side => (long)Screen.Width * Box.Height <= (long)Screen.Height * Box.Width ? ScreenSide.Width : ScreenSide.Height;

    /// <summary>What the screen shows, canvas px: the box in the middle of what lies around it, out to whole pixels.</summary>
    public Bounds View
    {
        get
        {
            var (left, right) = Around(Box.Left, Box.Right, Screen.Width / Ratio);
            var (top, bottom) = Around(Box.Top, Box.Bottom, Screen.Height / Ratio);
            return new Bounds(left, top, right, bottom);
        }
    }

    /// <summary>Where the view's first column lies on the screen, screen px; 0 or less.</summary>
    public double ViewLeft => (Screen.Width / 2.0) - ((((Box.Left + (double)Box.Right) / 2) - View.Left) * Ratio);

    /// <summary>Where the view's first row lies on the screen, screen px; 0 or less.</summary>
    public double ViewTop => (Screen.Height / 2.0) - ((((Box.Top + (double)Box.Bottom) / 2) - View.Top) * Ratio);

    /// <summary>The canvas on which the framing would have a wanted ratio: sides × ratio / wanted ratio, rounded up, the width to an even number.</summary>
    /// <param name="width">Columns of the canvas as it is, px.</param>
    /// <param name="height">Rows of the canvas as it is, px.</param>
    /// <param name="wanted">Screen pixels per canvas pixel, above 0.</param>
    public (long Width, long Height) FindCanvas(int width, int height, double wanted = 1)
    {
        var (columns, rows) = (RoundUp(width * Ratio / wanted), RoundUp(height * Ratio / wanted));
        return (columns + (columns % 2), rows);
    }

    private static long RoundUp(double length) => Math.Max(1, (long)Math.Ceiling(length - Slack));

    private static (int Start, int End) Around(int start, int end, double length)
    {
        var middle = (start + (double)end) / 2;
        return ((int)Math.Floor(middle - (length / 2) + Slack), (int)Math.Ceiling(middle + (length / 2) - Slack));
    }
}
