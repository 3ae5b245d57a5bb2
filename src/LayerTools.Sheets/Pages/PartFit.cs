using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>The size at which a part is shown: whole, undistorted, never enlarged.</summary>
internal sealed record PartFit(int Width, int Height, double Scale)
{
    /// <summary>Fits a part into a square.</summary>
    /// <param name="part">The part's rectangle, not empty.</param>
    /// <param name="side">Side of the square, px.</param>
    public static PartFit Into(Bounds part, int side)
    {
        var scale = Math.Min(1, (double)side / Math.Max(part.Width, part.Height));
        return new PartFit(Round(part.Width * scale), Round(part.Height * scale), scale);
    }

    /// <summary>The scale as people say it; 100 % only where not a pixel is lost.</summary>
    public string Percent => Scale switch
    {
        >= 1 => "100 %",
        >= 0.1 => FormattableString.Invariant($"{Math.Min(99, Math.Round(100 * Scale)):0} %"),
        >= 0.001 => FormattableString.Invariant($"{100 * Scale:0.#} %"),
        _ => "less than 0.1 %",
    };

    private static int Round(double side) => Math.Max(1, (int)Math.Round(side));
}
