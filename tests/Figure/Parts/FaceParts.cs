using LayerTools.Figure.Drawing;
using LayerTools.Model;
using SkiaSharp;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>What moves in the face, and the head below it. Only the left eye, ear and earring are drawn.</summary>
internal static class FaceParts
{
    private static readonly Tone Iris = Tone.Of("#4C9A8C");

    public static FigurePart CreateFace() => new("Face",
    [
        new FigurePart("brow_L", Brow) { Mark = Mark.Green },
        new FigurePart("brow_R", Brow) { IsReflected = true, Mark = Mark.Green },
        CreateEye(),
        new FigurePart("nose", brush =>
        {
            brush.Glow(4, 1632, 46, 26, Palette.SkinShadow, 0.7f);
            brush.Stroke("-16,1640 4,1650 24,1638", Palette.Skin.Line, 9, 0.7f);
            brush.Glow(0, 1606, 20, 26, Palette.Shine, 0.7f);
        }) { Mark = Mark.Green },
        CreateMouth(),
        CreateOtherMouth(),
        new FigurePart("cheek L", Cheek) { Mode = BlendMode.Multiply, Opacity = 0.7f, Mark = Mark.Green },
        new FigurePart("cheek R", Cheek) { Mode = BlendMode.Multiply, Opacity = 0.7f, IsReflected = true, Mark = Mark.Green },
        new FigurePart(" freckles ", brush =>
        {
            foreach (var side in (int[])[-1, 1])
                foreach (var (x, y) in ((int, int)[])[(270, 1640), (318, 1618), (352, 1652), (300, 1676), (386, 1624)])
                    brush.Glow(side * x, y, 11, 9, Palette.Skin.Line, 0.4f);
        }) { Mode = BlendMode.Multiply, Opacity = 0.6f, IsSpare = true },
    ]);

    public static FigurePart CreateHead() => new("Head",
    [
        new FigurePart("earring L", brush =>
        {
            brush.Outline(Oval(540, 1618, 14, 20), Palette.Brass.Shade, 8);
            brush.Form(Closed("540,1634 570,1694 540,1732 510,1694"), Palette.Brass, 14, 7);
        }) { Mark = Mark.Yellow },
        new FigurePart("ear inner L", brush =>
        {
            brush.Glow(572, 1480, 52, 82, Palette.SkinShadow, 0.8f);
            brush.Stroke("540,1400 610,1420 604,1500 560,1560", Palette.Skin.Line, 9, 0.6f);
        }) { IsClipped = true },
        new FigurePart("ear L", brush => brush.Form(Closed("460,1390 540,1336 634,1366 636,1480 590,1586 520,1616 456,1550"), Palette.Skin, 40)) { Mark = Mark.Green },
        new FigurePart("face shade", brush =>
        {
            brush.Glow(0, 1180, 620, 190, Palette.SkinShadow, 0.85f);
            foreach (var side in (int[])[-1, 1]) brush.Glow(side * 520, 1560, 170, 420, Palette.SkinShadow, 0.8f);
        })
        {
            IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.55f,
            Mask = new FigureMask(brush => brush.Fill(Oval(0, 1480, 560, 520), SKColors.White, 1, 30)),
        },
        new FigurePart("head", brush => brush.Form(Symmetric("0,830 340,890 510,1120 535,1380 486,1600 356,1790 170,1912 0,1944"), Palette.Skin, 80)) { Mark = Mark.Green },
    ]);

    public static FigurePart CreateNeck() => new("neck",
    [
        new FigurePart("neck shade", brush => brush.Glow(0, 1930, 260, 150, Palette.SkinShadow, 1)) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.85f, IsSpare = true },
        new FigurePart("neck base", brush => brush.Form(Symmetric("0,1740 168,1740! 160,1920 196,2090 330,2210! 0,2260"), Palette.Skin, 60)) { Mark = Mark.Green },
    ]);

    private static FigurePart CreateEye() => new("eye L copy 2",
    [
        new FigurePart("eyelash", brush =>
        {
            brush.Fill(Ribbon("112,1462 150,1372 240,1336 330,1368 378,1440 404,1438", 10, 34, 42, 40, 30, 0), Palette.Lash);
            brush.Fill(Ribbon("340,1378 392,1380 424,1356", 26, 16, 0), Palette.Lash);
        }) { Mark = Mark.Green },
        new FigurePart("lash low", brush => brush.Stroke("176,1574 262,1604 350,1556", Palette.Lash, 13, 0.75f)),
        new FigurePart("lid line", brush => brush.Stroke("140,1330 240,1290 352,1326", Palette.Skin.Line, 10, 0.6f)) { IsSpare = true },
        new FigurePart("ハイライト", brush =>
        {
            brush.Fill(Oval(208, 1416, 27, 33, -12), SKColors.White, 0.96f, 1.5f);
            brush.Fill(Oval(284, 1528, 15, 17), SKColors.White, 0.8f, 1.5f);
        }) { IsClipped = true, Mark = Mark.Green },
        new FigurePart("pupil", brush => brush.Fill(Oval(244, 1470, 36, 48), Palette.Lash, 0.92f, 4)) { IsClipped = true },
        new FigurePart("瞳", brush =>
        {
            var shape = Oval(244, 1472, 90, 112);
            brush.Gradient(shape, Tone.Mix(Iris.Shade, Palette.Lash, 0.45f), Iris.Base, Iris.Light);
            brush.Inside(shape, () =>
            {
                brush.Glow(244, 1556, 76, 50, SKColor.Parse("#BDF0D6"), 0.75f);
                brush.Rim(shape, Iris.Line, 26, 0.85f);
            });
        }) { IsClipped = true, Mark = Mark.Green },
        new FigurePart("eye shade", brush => brush.Glow(244, 1372, 170, 66, Palette.Shadow, 0.8f)) { IsSpare = true, IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.6f },
        new FigurePart("eye white", brush => brush.Gradient(Closed("120,1462 160,1376 244,1346 330,1376 372,1452 352,1551 262,1604 166,1567"), SKColor.Parse("#F3ECEC"), SKColors.White)) { Mark = Mark.Green },
    ]);

    private static FigurePart CreateMouth()
    {
        var shape = Closed("-104,1734! -40,1748 0,1744 40,1748 104,1734! 66,1802 0,1832 -66,1802");
        return new FigurePart("mouth",
        [
            new FigurePart("lip line", brush =>
            {
                brush.Fill(Ribbon("-118,1728 -40,1750 0,1746 40,1750 118,1728", 6, 14, 14, 14, 6), Palette.Lash);
                brush.Stroke("-26,1866 0,1871 26,1866", Palette.Skin.Line, 9, 0.45f);
            }) { Mark = Mark.Green },
            new FigurePart("teeth", brush => brush.Fill(Closed("-74,1738 0,1744 74,1738 52,1766 0,1772 -52,1766"), SKColor.Parse("#FBF6F0"))) { IsClipped = true },
            new FigurePart("tongue", brush => brush.Fill(Oval(0, 1830, 48, 28), SKColor.Parse("#D9786F"), 1, 3)) { IsClipped = true },
            new FigurePart("mouth in", brush => brush.Form(shape, Tone.Of("#8A3A40"), 24, 9)) { Mark = Mark.Green },
        ]);
    }

    private static FigurePart CreateOtherMouth() => new("mouth_closed old",
    [
        new FigurePart("Layer 52", brush => brush.Stroke("-84,1752 0,1776 84,1752", Palette.Lash, 15)),
        new FigurePart("Layer 53", brush => brush.Glow(0, 1800, 70, 22, Palette.SkinShadow, 0.6f)) { Mark = Mark.Red },
    ]) { IsHidden = true };

    private static void Brow(Brush brush) => brush.Fill(Ribbon("134,1290 232,1246 362,1286", 14, 30, 6), Palette.HairBack.Shade);

    private static void Cheek(Brush brush) => brush.Glow(352, 1650, 132, 76, Palette.Blush, 0.75f);
}
