using LayerTools.Figure.Drawing;
using LayerTools.Model;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>Hair in front of the face, beside it and behind the back.</summary>
internal static class HairParts
{
    public static FigurePart CreateFront() => new("hair_front",
    [
        Strand("Layer 37", "-40,940 -76,1100 -6,1260 -56,1440", 140),
        Strand("Layer 38", "130,940 200,1080 176,1220 226,1350", 136),
        Strand("Layer 39", "-190,940 -236,1090 -186,1240 -246,1400", 136),
        Strand("Layer 40", "330,960 420,1120 410,1300 476,1440", 130, true),
        Strand("Layer 41", "-340,960 -430,1120 -400,1300 -462,1452", 130, true),
        new FigurePart("hair shine", brush =>
        {
            foreach (var side in (int[])[-1, 1])
            {
                brush.Glow(side * 300, 1200, 190, 44, Palette.Shine, 0.8f);
                brush.Glow(side * 90, 1226, 110, 34, Palette.Shine, 0.7f);
            }
        }) { IsClipped = true, Mode = BlendMode.Screen, Opacity = 0.5f },
        new FigurePart("hair shadow copy", brush => brush.Glow(0, 1060, 640, 130, Palette.Shadow, 0.9f)) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.75f, IsSpare = true },
        new FigurePart("hair_front3", brush =>
        {
            brush.Form(Closed("-560,900 0,860 560,900 600,1150 560,1450! 470,1260 390,1220 330,1400! 230,1210 130,1190 66,1420! -40,1220 -130,1190 -236,1385! -310,1215 -400,1230 -540,1460! -600,1150"), Palette.Hair, 70);
            foreach (var x in (int[])[-440, -330, -160, -60, 150, 250, 420]) brush.Stroke($"{x * 0.8f:0},960 {x * 1.02f:0},1090 {x * 1.08f:0},1230", Palette.Hair.Line, 8, 0.4f);
        }) { Mark = Mark.Green },
        new FigurePart("前髪", brush => brush.Form(Symmetric("0,850 420,880 590,980 560,1130 300,1180 0,1170"), Palette.HairBack, 90)),
    ])
    {
        Mask = new FigureMask(brush => brush.Fill(Oval(0, 1190, 760, 420), SkiaSharp.SKColors.White, 1, 8)),
    };

    public static FigurePart CreateSide(string letter) => new(letter == "L" ? "hair_side L" : "hair_side R",
    [
        new FigurePart($"side shine {letter}", brush =>
        {
            brush.Glow(630, 1330, 46, 190, Palette.Shine, 0.8f);
            brush.Glow(610, 1960, 56, 150, Palette.Shine, 0.6f);
        }) { IsClipped = true, Mode = BlendMode.Screen, Opacity = 0.45f, IsSpare = true, IsReflected = letter == "R" },
        new FigurePart($"side lock {letter}", brush =>
        {
            brush.Form(Ribbon("500,880 610,1150 646,1480 600,1860 636,2180 560,2440", 170, 170, 132, 196, 150, 0), Palette.Hair, 60);
            brush.Stroke("590,1080 636,1320 650,1520 576,1860 606,2160", Palette.Hair.Line, 9, 0.45f);
            brush.Stroke("560,1040 606,1240 622,1480 630,1860 650,2120", Palette.Hair.Line, 8, 0.35f);
        }) { IsReflected = letter == "R", Mark = letter == "L" ? Mark.Green : Mark.None },
        new FigurePart($"side_under_{letter}", brush => brush.Form(Ribbon("520,900 660,1250 700,1600 640,1980 690,2330", 150, 190, 170, 160, 0), Palette.HairBack, 60)) { IsReflected = letter == "R" },
    ]);

    public static FigurePart CreateBack() => new("後ろ髪",
    [
        new FigurePart("Layer 8", brush =>
        {
            foreach (var side in (int[])[-1, 1])
            {
                brush.Stroke($"{side * 330},1500 {side * 520},1900 {side * 480},2350", Palette.HairBack.Line, 10, 0.5f);
                brush.Stroke($"{side * 520},1500 {side * 690},1900 {side * 660},2300", Palette.HairBack.Line, 10, 0.5f);
            }
        }) { IsClipped = true, IsSpare = true },
        new FigurePart("hair back shade", brush => brush.Glow(0, 1950, 560, 520, Palette.Shadow, 0.95f))
        {
            IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.8f,
            // Painted where the shading hides, and inverted so that it shows elsewhere.
            Mask = new FigureMask(brush => brush.Fill(Oval(0, 2440, 260, 120), SkiaSharp.SKColors.White, 1, 20)) { IsInverted = true },
        },
        new FigurePart("hair_back2", brush => brush.Form(Symmetric("0,700 430,760 690,1050 740,1500 800,1900 770,2180 860,2500! 720,2420 640,2300 560,2560! 440,2380 300,2340 180,2480! 80,2360 0,2340"), Palette.HairBack, 110)) { Mark = Mark.Green },
    ]) { Mode = BlendMode.Normal };

    private static FigurePart Strand(string name, string spine, float width, bool isSpare = false) => new(name, brush =>
    {
        brush.Form(Ribbon(spine, width * 0.6f, width, width * 0.7f, 0), Palette.Hair, 36, 9);
        brush.Stroke(spine, Palette.Hair.Line, 7, 0.35f);
    }) { IsSpare = isSpare };
}
