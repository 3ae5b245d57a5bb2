using LayerTools.Figure.Drawing;
using LayerTools.Model;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>Hips, legs and boots; the left boot has a strap that the right one lacks.</summary>
internal static class LegParts
{
    public static FigurePart CreateHip() => new("hip",
    [
        new FigurePart("trouser shade", brush => brush.Glow(0, 3480, 420, 240, Palette.Shadow, 1)) { IsSpare = true, IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.7f },
        new FigurePart("ズボン", brush => brush.Form(Symmetric("0,3280 430,3280! 486,3600 500,3880! 280,3900 70,3850! 0,3760"), Palette.Trousers, 80)) { Mark = Mark.Green },
    ]);

    public static FigurePart Create(string letter)
    {
        var isReflected = letter == "R";
        var mark = isReflected ? Mark.None : Mark.Green;
        List<FigurePart> parts =
        [
            new FigurePart($"boot rim {letter}", brush => brush.Form(Closed("130,4770! 300,4740 486,4770! 500,4900 488,4960! 310,4990 128,4960! 116,4880"), Palette.Cream, 46)) { IsReflected = isReflected, Mark = mark },
            new FigurePart($"boot_shine_{letter}", brush =>
            {
                brush.Glow(250, 5230, 60, 190, Palette.Shine, 0.6f);
                brush.Glow(370, 5540, 100, 52, Palette.Shine, 0.7f);
            }) { IsReflected = isReflected, IsClipped = true, Mode = BlendMode.Screen, Opacity = 0.4f, IsSpare = true },
            new FigurePart($"boot {letter}", brush =>
            {
                brush.Form(Closed("156,4840! 460,4840! 472,5120 476,5320 566,5470 590,5600 560,5670 200,5670 148,5600 152,5400 170,5200"), Palette.Boot, 80);
                brush.Stroke("176,5420 300,5470 470,5410", Palette.Boot.Line, 10, 0.5f);
                for (var y = 5050; y < 5360; y += 76) brush.Stroke($"230,{y} 300,{y + 22} 390,{y - 4}", Palette.Cream.Base, 15, 0.9f);
            }) { IsReflected = isReflected, Mark = mark },
            new FigurePart($"sole {letter}", brush => brush.Form(Closed("140,5610! 600,5610! 604,5680 560,5710 190,5710 136,5680"), Palette.Sole, 30)) { IsReflected = isReflected, Mark = mark },
            new FigurePart($"leg shade {letter}", brush =>
            {
                brush.Glow(310, 4380, 300, 240, Palette.Shadow, 0.9f);
                brush.Glow(150, 4600, 90, 400, Palette.Shadow, 0.7f);
            }) { IsReflected = isReflected, IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.7f, IsSpare = true },
            new FigurePart($"shin {letter}", brush =>
            {
                brush.Form(Closed("156,4180 310,4130 470,4180 476,4500 456,5000 310,5050 184,5000 170,4560"), Palette.Trousers, 70, 0);
                // No line across the knee.
                brush.Fill(Ribbon("158,4230 170,4560 185,4990", 0, 11, 11), Palette.Trousers.Line);
                brush.Fill(Ribbon("473,4230 476,4500 456,4990", 0, 11, 11), Palette.Trousers.Line);
                brush.Stroke("186,4700 270,4740 370,4716", Palette.Trousers.Line, 12, 0.5f);
            }) { IsReflected = isReflected, Mark = mark },
            new FigurePart($"thigh_{letter}", brush => brush.Form(Closed("44,3640 280,3560 500,3640 506,3980 476,4280 310,4360 166,4280 110,3980"), Palette.Trousers, 80)) { IsReflected = isReflected },
        ];
        if (letter == "L")
        {
            parts.Insert(0, new FigurePart("boot strap L", brush =>
            {
                brush.Form(Ribbon("160,5210 310,5250 480,5200", 70, 74, 70), Palette.HatBand, 24, 9);
                brush.Form(Closed("268,5196! 352,5204! 348,5296! 264,5288!"), Palette.Brass, 20, 8);
            }) { Mark = Mark.Yellow });
        }

        return new FigurePart(letter == "L" ? "Leg L" : "leg_R", parts);
    }
}
