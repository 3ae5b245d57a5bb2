using LayerTools.Figure.Drawing;
using LayerTools.Model;
using SkiaSharp;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>The left arm; the right one is left to the mirror.</summary>
internal static class ArmParts
{
    public static FigurePart Create() => new(" Arm L",
    [
        CreateHand(),
        new FigurePart("cuff_L", brush =>
        {
            brush.Form(Ribbon("1098,3330 1150,3420 1196,3506", 268, 284, 290), Palette.CoatDark, 50);
            brush.Stroke("1004,3476 1110,3490 1260,3392", Palette.CoatDark.Light, 7, 0.4f);
        }) { Mark = Mark.Green },
        new FigurePart("sleeve fold L", brush =>
        {
            brush.Stroke("820,3030 930,3060 1030,3010", Palette.Coat.Line, 16, 0.5f);
            brush.Stroke("850,3090 950,3110 1050,3070", Palette.Coat.Line, 13, 0.4f);
            brush.Glow(920, 2970, 190, 100, Palette.Shadow, 0.7f);
        }) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.7f, IsSpare = true },
        new FigurePart("左袖", brush =>
        {
            brush.Form(Limb(888, 2930, 268, 1160, 3420, 226), Palette.Coat, 70, 0, light: 0.16f);
            // No line across the elbow, so that the sleeve reads as one piece.
            brush.Fill(Ribbon("771,2995 916,3235 1061,3475", 0, 11, 11, 11), Palette.Coat.Line);
            brush.Fill(Ribbon("1005,2865 1132,3115 1259,3365", 0, 11, 11, 11), Palette.Coat.Line);
        }) { Mark = Mark.Green },
        new FigurePart("upper shade L", brush =>
        {
            brush.Glow(560, 2560, 130, 330, Palette.Shadow, 0.85f);
            brush.Stroke("690,2860 800,2850 920,2770", Palette.Coat.Line, 16, 0.5f);
        })
        {
            IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.6f,
            Mask = new FigureMask(brush => brush.Glow(640, 2560, 320, 420, SKColors.White, 1)) { IsDisabled = true },
        },
        new FigurePart("upper sleeve L copy", brush => brush.Form(Limb(586, 2400, 330, 896, 2950, 270), Palette.Coat, 80, light: 0.2f)) { Mark = Mark.Green },
        new FigurePart("arm skin L", brush =>
        {
            brush.Form(Limb(600, 2420, 220, 890, 2940, 180), Palette.Skin, 50);
            brush.Form(Limb(890, 2940, 180, 1200, 3520, 140), Palette.Skin, 50);
        }),
    ]);

    private static FigurePart CreateHand() => new("Hand L",
    [
        new FigurePart("thumb L", brush =>
        {
            brush.Form(Limb(1172, 3600, 76, 1216, 3718, 58), Palette.Skin, 24, 9);
            brush.Stroke("1194,3736 1214,3748 1234,3738", Palette.Skin.Line, 6, 0.5f);
        }),
        Finger("finger1 L", 1246, 3650, 1258, 3776),
        Finger("finger2 L", 1290, 3636, 1308, 3778),
        Finger("finger3 L", 1330, 3616, 1352, 3756),
        Finger("finger4 L", 1360, 3590, 1386, 3704),
        new FigurePart("palm L", brush => brush.Form(Closed("1150,3500 1280,3440 1360,3520 1396,3630 1330,3690 1220,3700 1156,3620"), Palette.Skin, 50)) { Mark = Mark.Green },
    ]);

    private static FigurePart Finger(string name, float x0, float y0, float x1, float y1) =>
        new(name, brush => brush.Form(Limb(x0, y0, 66, x1, y1, 54), Palette.Skin, 22, 9));
}
