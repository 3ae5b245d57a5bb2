using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Symmetry;

/// <summary>The colours and patterns of a picture of differences.</summary>
internal static class SymmetryInk
{
    /// <summary>Distance from one line of a hatching to the next, px.</summary>
    private const int Period = 8;

    private const int FadedDark = 190;
    private const int FadedLight = 244;

    public static Rgb Line => Rgb.FromNumber(0x161616);

    private static Rgb ExtraPaper => Rgb.FromNumber(0xffd7a8);

    private static Rgb ExtraInk => Rgb.FromNumber(0x8a2f00);

    private static Rgb MissingPaper => Rgb.FromNumber(0xfff6ea);

    private static Rgb MissingInk => Rgb.FromNumber(0xd9771f);

    /// <summary>The colour of one pixel of a cell.</summary>
    /// <param name="cell">What is true there.</param>
    /// <param name="faded">The figure there, faded.</param>
    /// <param name="x">The pixel's column, which decides on the hatching.</param>
    /// <param name="y">Its row.</param>
    public static Rgb Choose(SymmetryCell cell, Rgb faded, int x, int y) => cell switch
    {
        SymmetryCell.Clear => Rgb.White,
        SymmetryCell.Same => faded,
        SymmetryCell.Slight => Rgb.FromNumber(0xbcd9f2),
        SymmetryCell.Visible => Rgb.FromNumber(0x7fb2e0),
        SymmetryCell.Strong => Rgb.FromNumber(0x3a76b5),
        SymmetryCell.Other => Rgb.FromNumber(0x123a6b),
        SymmetryCell.Extra => (x + y) % Period < 3 ? ExtraInk : ExtraPaper,
        _ => (x - y + (Period << 16)) % Period < 1 ? MissingInk : MissingPaper,
    };

    /// <summary>A light grey that still shows the drawing.</summary>
    /// <param name="brightness">0 to 1.</param>
    public static Rgb Faded(double brightness)
    {
        var grey = (byte)(FadedDark + ((FadedLight - FadedDark) * brightness));
        return new Rgb(grey, grey, grey);
    }
}
