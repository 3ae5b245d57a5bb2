using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>The colours of a sheet. Tile is what parts stand on, paper is all around and carries the words.</summary>
internal sealed record Palette(GroundPattern Pattern, Rgb Tile, Rgb OtherTile, Rgb TileInk, Rgb Paper, Rgb Ink, Rgb QuietInk, Rgb Line)
{
    private const double DarkTile = 0.1;

    /// <summary>What pictures stand on in a tile.</summary>
    public Ground GetGround(Bounds tile) => new(tile, Pattern, Tile, OtherTile);

    /// <summary>Light paper, or dark paper around dark tiles, so that no bright surround outshines the parts.</summary>
    public static Palette For(SheetBackground background)
    {
        var (pattern, tile, other) = (background.Pattern, background.First, background.Second);
        return Contrast.Luminance(tile) < DarkTile
            ? new Palette(pattern, tile, other, Contrast.ChooseInk(tile), Rgb.FromNumber(0x1b1b1c), Rgb.FromNumber(0xf0f0ef), Rgb.FromNumber(0xa9a9a8), Rgb.FromNumber(0x3c3c3d))
            : new Palette(pattern, tile, other, Contrast.ChooseInk(tile), Rgb.FromNumber(0xf5f5f4), Rgb.FromNumber(0x1c1c1d), Rgb.FromNumber(0x5e5e5d), Rgb.FromNumber(0xcfcfcd));
    }
}
