using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Rendering;

/// <summary>What stands around the cells of an HTML sheet.</summary>
internal static class HtmlSheetStyle
{
    public const string End = "</main>\n</body>\n</html>\n";

    private const int PairGap = 14;

    public static string Begin(SheetOptions options, SheetGrid grid, Palette palette, SheetHeading heading)
    {
        var width = (options.View == SheetView.Both ? 2 : 1) * grid.TileWidth;
        if (options.Arrangement == SheetArrangement.Pairs) width = (2 * width) + PairGap;
        return FormattableString.Invariant($$"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
            <meta name="generator" content="LayerTools">
            <title>{{HtmlText.Escape(heading.Title)}}</title>
            <style>
            :root { color-scheme: {{(Contrast.Luminance(palette.Paper) < 0.5 ? "dark" : "light")}}; }
            body { margin: 0; padding: clamp(12px, 3vw, 48px); background: {{palette.Paper}}; color: {{palette.Ink}}; font: 13px/1.45 system-ui, sans-serif; }
            h1 { margin: 0; font-size: 27px; line-height: 1.4; overflow-wrap: anywhere; }
            header p { margin: 0; font-size: 15px; line-height: 1.6; }
            header { margin-bottom: 22px; }
            header p, .quiet { color: {{palette.QuietInk}}; }
            main { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, {{Math.Max(width, 160)}}px), 1fr)); gap: 30px 28px; align-items: start; }
            figure { margin: 0; break-inside: avoid; }
            .pair { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: {{PairGap}}px; break-inside: avoid; }
            .tiles { display: flex; gap: 6px; }
            .tile { box-sizing: border-box; flex: 1 1 0; min-width: 0; height: {{grid.TileHeight}}px; padding: 4px; display: grid; place-content: center; place-items: center; text-align: center; {{Ground(palette)}} {{Edge(palette)}} }
            .tile > span { color: {{palette.TileInk}}; background: {{palette.Tile}}; padding: 0 6px; }
            .plain { background: {{palette.Tile}}; }
            .missing { background: none; border: 1px dashed {{palette.QuietInk}}; }
            .missing > span { color: {{palette.Ink}}; background: none; }
            .lost img { outline: 1px solid {{palette.TileInk}}; }
            img { display: block; max-width: 100%; max-height: {{grid.TileHeight - 8}}px; object-fit: contain; }
            .hard { image-rendering: pixelated; }
            figcaption { margin-top: 8px; }
            figcaption > * { display: block; overflow-wrap: anywhere; }
            figcaption strong { font-size: 15px; }
            .state { padding-left: 19px; position: relative; }
            .state svg { position: absolute; left: 0; top: 3px; color: {{palette.QuietInk}}; }
            @media print { body { padding: 0; } .tile { print-color-adjust: exact; -webkit-print-color-adjust: exact; } main { gap: 16px; grid-template-columns: repeat(auto-fill, minmax(170px, 1fr)); } }
            </style>
            </head>
            <body>
            <header>
            <h1 dir="auto">{{HtmlText.Escape(heading.Title)}}</h1>
            <p>{{HtmlText.Escape(heading.Facts)}}</p>
            <p>{{HtmlText.Escape(heading.Notes)}}</p>
            </header>
            <main>

            """).Replace("\r\n", "\n");
    }

    private static string Ground(Palette palette) => palette.Pattern switch
    {
        GroundPattern.Checker => $"background: repeating-conic-gradient({palette.OtherTile} 0 25%, {palette.Tile} 0 50%) 0 0 / 32px 32px;",
        GroundPattern.Halves => $"background: linear-gradient(90deg, {palette.Tile} 50%, {palette.OtherTile} 50%);",
        _ => $"background: {palette.Tile};",
    };

    private static string Edge(Palette palette) => Contrast.Ratio(palette.Tile, palette.Paper) < 1.3 ? $"border: 1px solid {palette.Line};" : string.Empty;
}
