using LayerTools.Figure.Drawing;
using LayerTools.Model;
using SkiaSharp;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>The lantern in the left hand and the light it gives.</summary>
internal static class LanternParts
{
    private const float X = 1316;

    public static FigurePart CreateLight() => new("light",
    [
        new FigurePart("glow copy", brush => brush.Glow(X, 4300, 760, 760, Palette.Flame, 0.75f)) { Mode = BlendMode.Screen, Opacity = 0.6f },
        new FigurePart("sparks", brush =>
        {
            for (var i = 0; i < 26; i++)
            {
                var turn = i * 2.39996f;
                var reach = 240 + i * 15;
                brush.Glow(X + MathF.Cos(turn) * reach * 0.7f, 4200 + MathF.Sin(turn) * reach, 12 + i % 4 * 5, 12 + i % 4 * 5, Palette.Flame, 0.85f);
            }
        }) { Mode = BlendMode.Screen, Opacity = 0.8f, Mark = Mark.Red, IsSpare = true },
        new FigurePart("warm side", brush => brush.Glow(960, 3900, 620, 900, Palette.Flame, 0.5f)) { Mode = BlendMode.Overlay, Opacity = 0.3f, IsSpare = true },
    ]);

    public static FigurePart CreateLantern() => new("Lantern",
    [
        new FigurePart("lantern roof", brush =>
        {
            brush.Form(Closed("1316,3916! 1380,3950 1480,4040 1500,4096! 1132,4096! 1152,4040 1252,3950"), Palette.Brass, 40);
            brush.Form(Oval(X, 3918, 44, 32), Palette.Brass, 18, 9);
        }) { Mark = Mark.Yellow },
        new FigurePart("Layer 12", brush =>
        {
            foreach (var side in (int[])[-1, 1]) brush.Form(Ribbon($"{X + side * 130},4080 {X + side * 176},4300 {X + side * 130},4540", 24, 26, 24), Palette.Iron, 10, 7);
            brush.Form(Ribbon($"{X - 172},4300 {X},4334 {X + 172},4300", 20, 20, 20), Palette.Iron, 8, 7);
        }),
        new FigurePart("glass shine", brush => brush.Fill(Ribbon("1212,4130 1180,4280 1214,4470", 16, 44, 16), SKColors.White, 0.8f, 8)) { IsClipped = true, Mode = BlendMode.Screen, Opacity = 0.7f },
        new FigurePart("炎", brush =>
        {
            brush.Glow(X, 4350, 170, 220, SKColors.White, 0.8f);
            brush.Gradient(Closed("1316,4160! 1376,4310 1362,4420 1316,4456 1270,4420 1256,4310"), SKColor.Parse("#FFF3C4"), SKColor.Parse("#FFC04D"), SKColor.Parse("#F08A3C"));
            brush.Fill(Closed("1316,4280! 1344,4370 1316,4430 1288,4370"), SKColor.Parse("#FFFBE6"), 0.9f, 5);
        }) { IsClipped = true, Mark = Mark.Green },
        new FigurePart("glass", brush => brush.Form(Closed("1172,4080! 1460,4080! 1494,4300 1460,4540! 1172,4540! 1138,4300"), Palette.Glass, 60)) { Mark = Mark.Green },
        new FigurePart("lantern base", brush =>
        {
            brush.Form(Closed("1146,4520! 1486,4520! 1512,4640! 1120,4640!"), Palette.Brass, 40);
            brush.Form(Closed("1106,4630! 1526,4630! 1530,4690 1102,4690"), Palette.Iron, 24);
        }) { Mark = Mark.Yellow },
        new FigurePart("handle", brush => brush.Form(Ribbon($"{X - 132},4040 {X - 140},3880 {X},3726 {X + 140},3880 {X + 132},4040", 26, 26, 28, 26, 26), Palette.Iron, 10, 7)),
    ]) { Mode = BlendMode.Normal };
}
