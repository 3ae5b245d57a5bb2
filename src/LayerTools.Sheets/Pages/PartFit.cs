using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>The size at which a part is shown: whole and undistorted.</summary>
/// <param name="Width">Columns of its picture, px.</param>
/// <param name="Height">Rows of its picture, px.</param>
/// <param name="Scale">Pixels of the picture for one of the part, at most 1.</param>
/// <param name="Zoom">How many times the picture is enlarged on the page, 1 or more; more only where <paramref name="Scale"/> is 1.</param>
internal sealed record PartFit(int Width, int Height, double Scale, int Zoom = 1)
{
    /// <summary>The scale as people say it; 100 % only where not a pixel is lost.</summary>
    public string Percent => Scale switch
    {
        >= 1 => FormattableString.Invariant($"{100 * Zoom} %"),
        >= 0.1 => FormattableString.Invariant($"{Math.Min(99, Math.Round(100 * Scale)):0} %"),
        >= 0.001 => FormattableString.Invariant($"{100 * Scale:0.#} %"),
        _ => "less than 0.1 %",
    };

    /// <summary>Fits a part into a square.</summary>
    /// <param name="part">The part's rectangle, not empty.</param>
    /// <param name="side">Side of the square, px.</param>
    public static PartFit Into(Bounds part, int side) => At(part, FindScale(part, side, side));

    /// <summary>The largest scale at which a part fits a rectangle; may be more than 1.</summary>
    public static double FindScale(Bounds part, int width, int height) => Math.Min((double)width / part.Width, (double)height / part.Height);

    /// <summary>A part at a scale.</summary>
    /// <param name="part">The part's rectangle, not empty.</param>
    /// <param name="scale">The scale. What is above 1 counts only if <paramref name="enlarge"/> is asked for, and then in whole numbers.</param>
    /// <param name="enlarge">Whether the part may become larger than it is.</param>
    public static PartFit At(Bounds part, double scale, bool enlarge = false)
    {
        if (scale >= 1) return new PartFit(part.Width, part.Height, 1, enlarge ? (int)Math.Min(scale, 10_000) : 1);
        return new PartFit(Round(part.Width * scale), Round(part.Height * scale), scale);
    }

    private static int Round(double side) => Math.Max(1, (int)Math.Round(side));
}
