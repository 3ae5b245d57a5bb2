using LayerTools.Figure.Drawing;
using LayerTools.Model;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>A wool scarf around the neck, its end hanging down in front.</summary>
internal static class ScarfParts
{
    public static FigurePart Create() => new("マフラー",
    [
        new FigurePart("scarf_knot", brush =>
        {
            brush.Form(Closed("-40,2150 70,2110 190,2150 220,2270 150,2370 10,2380 -60,2280"), Palette.Scarf, 60);
            brush.Stroke("0,2160 60,2250 40,2350", Palette.Scarf.Line, 9, 0.5f);
            brush.Stroke("90,2150 130,2240 110,2340", Palette.Scarf.Line, 9, 0.5f);
        }) { Mark = Mark.Green },
        new FigurePart("Layer 14", brush =>
        {
            brush.Form(Symmetric("0,1946 220,1896 420,1922 492,2010 440,2110 240,2160 0,2186"), Palette.Scarf, 70);
            foreach (var side in (int[])[-1, 1])
            {
                brush.Stroke($"{side * 470},1990 {side * 280},2080 {side * 20},2110", Palette.Scarf.Line, 10, 0.5f);
                brush.Stroke($"{side * 440},1950 {side * 260},2010 {side * 60},2030", Palette.Scarf.Line, 9, 0.35f);
            }
        }) { Mark = Mark.Green },
        new FigurePart("Layer 15", brush => brush.Form(Symmetric("0,2060 240,2040 470,2060 520,2160 420,2260 220,2320 0,2340"), Palette.Scarf, 80)),
        new FigurePart("scarf stripes", brush =>
        {
            foreach (var y in (int[])[2700, 2800, 3010])
                brush.Fill(Ribbon($"-120,{y} 70,{y + 22} 260,{y - 4}", 44, 44, 44), Palette.Cream.Base, 0.92f, 2);
        }) { IsClipped = true, IsSpare = true },
        new FigurePart("scarf shade", brush => brush.Glow(84, 2360, 230, 150, Palette.Shadow, 0.9f)) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.7f },
        new FigurePart("scarf_end", brush =>
        {
            brush.Form(Ribbon("70,2270 90,2520 60,2800 84,3110", 170, 196, 206, 214), Palette.Scarf, 60);
            brush.Stroke("46,2400 60,2640 30,2960", Palette.Scarf.Line, 9, 0.4f);
            brush.Stroke("110,2400 134,2640 110,2960", Palette.Scarf.Line, 9, 0.4f);
        }) { Mark = Mark.Yellow },
        new FigurePart("scarf tassels", brush =>
        {
            for (var i = 0; i < 9; i++)
            {
                var x = -8 + i * 23;
                // Sewn on well above the edge, so that nothing opens when the end swings.
                brush.Form(Ribbon($"{x},{3080 - i * 2} {x + 5},{3180 - i * 2} {x + i % 3 * 5},{3232 - i * 2}", 20, 24, 10), Palette.Scarf, 8, 6);
            }
        }) { IsSpare = true },
    ]) { Mode = BlendMode.Normal };
}
