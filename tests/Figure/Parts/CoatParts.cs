using LayerTools.Figure.Drawing;
using LayerTools.Model;
using SkiaSharp;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>A double-breasted coat, the knitted pullover below it, and the coat's back.</summary>
internal static class CoatParts
{
    private static readonly (float X, float Y)[] Buttons = [(434, 2590), (384, 2764), (340, 2920), (310, 3300)];

    public static FigurePart CreateFront() => new("Coat front",
    [
        .. Buttons.Select((place, row) => new FigurePart($"button{row + 1}_L", brush => Button(brush, place.X, place.Y)) { Mark = row < 2 ? Mark.Green : Mark.None, IsSpare = true }),
        .. Buttons.Select((place, row) => new FigurePart($"button{row + 1}_R", brush => Button(brush, place.X, place.Y)) { IsReflected = true, Mark = row < 2 ? Mark.Green : Mark.None, IsSpare = true }),
        new FigurePart("belt buckle", brush =>
        {
            brush.Form(Closed("-104,3000! 104,3000! 104,3176! -104,3176!"), Palette.Brass, 30, 9);
            brush.Form(Closed("-66,3038! 66,3038! 66,3138! -66,3138!"), Palette.HatBand, 24, 8);
            brush.Fill(Ribbon("-80,3088 90,3088", 20, 20), Palette.Brass.Light);
        }) { Mark = Mark.Green },
        new FigurePart("Layer 63", brush => brush.Form(Symmetric("0,3010 300,3000 622,2950! 630,3096! 300,3154 0,3166"), Palette.HatBand, 46)),
        new FigurePart("pocket_L", Pocket) { Mark = Mark.Yellow },
        new FigurePart("pocket_R", Pocket) { IsReflected = true },
        new FigurePart("lapel L", Lapel) { Mark = Mark.Green },
        new FigurePart("lapel R", Lapel) { IsReflected = true, Mark = Mark.Green },
        CreateShade("coat shade L", false),
        new FigurePart("coat panel L", Panel) { Mark = Mark.Green },
        CreateShade("coat shade R", true),
        new FigurePart("coat panel R", Panel) { IsReflected = true, Mark = Mark.Green },
    ]) { Mode = BlendMode.Normal };

    public static FigurePart CreateTorso() => new("Torso",
    [
        new FigurePart("knit", brush =>
        {
            for (var x = -440; x <= 440; x += 55) brush.Fill(Ribbon($"{x * 0.8f:0},2180 {x},2700 {x},3440", 6, 10, 12, 10, 6), Palette.Cream.Line, 0.3f);
        }) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.6f },
        new FigurePart("セーター", brush => brush.Form(Symmetric("0,2150 300,2150 480,2340 466,2800 440,3200 470,3460! 0,3500"), Palette.Cream, 100)) { Mark = Mark.Green },
    ]);

    public static FigurePart CreateBack() => new("Coat back",
    [
        new FigurePart("coat tail L", Tail),
        new FigurePart("coat tail R", Tail) { IsReflected = true },
        new FigurePart("lining shade", brush => brush.Glow(0, 3500, 560, 620, Palette.Shadow, 1)) { IsSpare = true, IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.8f },
        new FigurePart("裏地", brush => brush.Form(Symmetric("0,2420 420,2440 540,2800 520,3150 600,3700 690,4310! 380,4260 0,4230"), Palette.Lining, 130)),
    ]);

    /// <summary>The left half of the coat.</summary>
    public static SKPath PanelShape() =>
        Closed("-60,2900! 60,2560 240,2160 480,2186 660,2290 700,2470 640,2800 610,3060 670,3400 790,3900 880,4360! 640,4420 380,4410 250,4370! 190,3900 100,3400 -50,3160!");

    private static void Button(Brush brush, float x, float y)
    {
        brush.Glow(x + 5, y + 12, 62, 56, Palette.CoatDark.Line, 0.55f);
        brush.Form(Oval(x, y, 44, 44), Palette.Brass, 20, 8);
        brush.Outline(Oval(x, y, 28, 28), Palette.Brass.Shade, 6, 0.8f);
        brush.Glow(x - 12, y - 16, 16, 12, SKColors.White, 0.8f);
    }

    private static void Pocket(Brush brush)
    {
        brush.Form(Closed("318,3446! 594,3396! 630,3536! 330,3598!"), Palette.CoatDark, 44);
        brush.Stroke("346,3570 480,3548 606,3516", Palette.CoatDark.Light, 6, 0.5f);
    }

    private static void Lapel(Brush brush) =>
        brush.Form(Closed("250,2080 430,2120 560,2260! 448,2380! 512,2450! 300,2760 40,3000! 50,2700 150,2330"), Palette.CoatDark, 60);

    private static void Panel(Brush brush)
    {
        brush.Form(PanelShape(), Palette.Coat, 110, light: 0.16f);
        brush.Stroke("520,3190 560,3700 640,4330", Palette.Coat.Line, 10, 0.4f);
        brush.Stroke("250,4330 420,4370 640,4378 860,4320", Palette.Coat.Light, 7, 0.4f);
    }

    private static FigurePart CreateShade(string name, bool isReflected) => new(name, brush =>
    {
        brush.Glow(650, 2700, 150, 520, Palette.Shadow, 0.85f);
        brush.Glow(330, 3260, 420, 120, Palette.Shadow, 0.85f);
        brush.Fill(Ribbon("420,3200 470,3700 520,4400", 20, 90, 150), Palette.Shadow, 0.5f, 34);
        brush.Fill(Ribbon("720,3400 760,3900 830,4400", 10, 70, 110), Palette.Shadow, 0.5f, 30);
    }) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.65f, IsReflected = isReflected };

    private static void Tail(Brush brush) => brush.Form(Closed("430,2900 560,3000 640,3400 770,3900 862,4440! 700,4480 540,4400 470,3900"), Palette.CoatDark, 90);
}
