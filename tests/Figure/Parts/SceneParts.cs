using LayerTools.Figure.Drawing;
using LayerTools.Model;
using SkiaSharp;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>What is in the file besides the figure: guide lines, the first sketch, the shadow on the floor, the backdrop.</summary>
internal static class SceneParts
{
    public static FigurePart CreateGuide() => new("guide", brush =>
    {
        brush.Fill(Ribbon("0,0 0,6000", 10, 10), Palette.GuideLine);
        foreach (var y in (int[])[400, 1944, 3080, 4400, 5710]) brush.Fill(Ribbon($"-1500,{y} 1500,{y}", 8, 8), Palette.GuideLine);
    }) { IsHidden = true, Opacity = 0.6f, IsWash = true };

    public static FigurePart CreateSketch() => new("Sketch", brush =>
    {
        SKPath[] shapes =
        [
            Oval(0, 1300, 560, 680), Oval(0, 1440, 520, 520), Symmetric("0,2150 640,2260 600,3050 860,4380 0,4420"),
            Limb(590, 2390, 330, 890, 2950, 260), Limb(890, 2950, 260, 1240, 3600, 200), Limb(310, 3600, 380, 310, 5600, 300),
            Limb(-590, 2390, 330, -890, 2950, 260), Limb(-890, 2950, 260, -1240, 3600, 200), Limb(-310, 3600, 380, -310, 5600, 300),
        ];
        foreach (var shape in shapes) brush.Outline(shape, Palette.Pencil, 24, 0.75f);
        brush.Stroke("-620,1450 0,1490 620,1450", Palette.Pencil, 26, 0.8f);
        brush.Stroke("-10,620 14,1300 0,1960", Palette.Pencil, 26, 0.8f);
    }) { IsHidden = true, Opacity = 0.8f, IsWash = true };

    public static FigurePart CreateFloor() => new("Layer 1", brush => brush.Glow(0, 5690, 980, 130, SKColor.Parse("#2C2838"), 0.75f)) { Mode = BlendMode.Multiply, Opacity = 0.7f };

    public static FigurePart CreateBackdrop() => new("backdrop", brush => brush.Fill(Closed("-2600,-100! 2600,-100! 2600,6100! -2600,6100!"), SKColor.Parse("#777777"))) { Grain = 0 };
}
