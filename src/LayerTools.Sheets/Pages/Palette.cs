namespace LayerTools.Sheets.Pages;

/// <summary>The colours of a sheet. Tile is what parts stand on, paper is all around and carries the words.</summary>
internal sealed record Palette(Rgb Tile, Rgb OtherTile, Rgb TileInk, Rgb Paper, Rgb Ink, Rgb QuietInk, Rgb Line)
{
    private const double DarkTile = 0.1;

    /// <summary>Whether the tile is a board of two colours.</summary>
    public bool IsChecker => Tile != OtherTile;

    /// <summary>Light paper, or dark paper around dark tiles, so that no bright surround outshines the parts.</summary>
    public static Palette For(SheetBackground background)
    {
        var (tile, other) = (background.First, background.Second);
        return Contrast.Luminance(tile) < DarkTile
            ? new Palette(tile, other, Contrast.ChooseInk(tile), Rgb.FromNumber(0x1b1b1c), Rgb.FromNumber(0xf0f0ef), Rgb.FromNumber(0xa9a9a8), Rgb.FromNumber(0x3c3c3d))
            : new Palette(tile, other, Contrast.ChooseInk(tile), Rgb.FromNumber(0xf5f5f4), Rgb.FromNumber(0x1c1c1d), Rgb.FromNumber(0x5e5e5d), Rgb.FromNumber(0xcfcfcd));
    }
}
