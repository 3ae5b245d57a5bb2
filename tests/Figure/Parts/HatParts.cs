using LayerTools.Figure.Drawing;
using LayerTools.Model;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>A keeper's cap with a small brass lamp.</summary>
internal static class HatParts
{
    public static FigurePart Create() => new("帽子",
    [
        new FigurePart("hat_emblem copy", brush =>
        {
            brush.Form(Closed("-34,855! 34,855! 44,960! -44,960!"), Palette.Cream, 20, 8);
            brush.Form(Closed("0,795 46,830! 46,862! -46,862! -46,830!"), Palette.Scarf, 16, 8);
            brush.Stroke("-36,898 0,904 36,898", Palette.Scarf.Base, 18);
            brush.Stroke("-40,934 0,940 40,934", Palette.Scarf.Base, 18);
        }) { Mark = Mark.Green },
        new FigurePart("hat plate", brush => brush.Form(Oval(0, 888, 100, 108), Palette.Brass, 34, 9)) { Mark = Mark.Green },
        new FigurePart("visor shade", brush => brush.Glow(0, 976, 520, 100, Palette.Shadow, 0.8f)) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.7f, IsSpare = true },
        new FigurePart("visor", brush =>
        {
            brush.Form(Symmetric("0,980 300,960 548,905! 566,975 410,1062 200,1104 0,1114"), Palette.HatBand, 60);
            brush.Stroke("-470,1010 -250,1070 0,1086 250,1070 470,1010", Palette.HatBand.Light, 7, 0.55f);
        }) { Mark = Mark.Green },
        new FigurePart("Layer 21", brush =>
        {
            brush.Form(Symmetric("0,862 300,842 562,786! 578,912! 300,980 0,998"), Palette.HatBand, 50);
            foreach (var side in (int[])[-1, 1]) brush.Stroke($"{side * 140},876 {side * 330},858 {side * 545},810", Palette.HatBand.Light, 7, 0.5f);
        }) { Mark = Mark.Green },
        new FigurePart("hat shadow", brush =>
        {
            brush.Glow(-330, 800, 420, 230, Palette.Shadow, 0.55f);
            brush.Glow(330, 800, 420, 230, Palette.Shadow, 0.55f);
            brush.Glow(0, 920, 640, 120, Palette.Shadow, 0.8f);
        }) { IsClipped = true, Mode = BlendMode.Multiply, Opacity = 0.6f },
        new FigurePart("hat light", brush => brush.Glow(-40, 560, 400, 170, Palette.Shine, 0.7f)) { IsClipped = true, Mode = BlendMode.Screen, Opacity = 0.55f, IsSpare = true },
        new FigurePart("hat_top", brush =>
        {
            brush.Form(Symmetric("0,404 300,424 570,530 716,690 690,830 580,925 300,985 0,1000"), Palette.Hat, 110);
            foreach (var side in (int[])[-1, 1])
            {
                brush.Stroke($"{side * 20},425 {side * 210},600 {side * 260},880", Palette.Hat.Line, 8, 0.4f);
                brush.Stroke($"{side * 60},425 {side * 480},600 {side * 560},850", Palette.Hat.Line, 8, 0.4f);
            }
        }) { Mark = Mark.Green },
        new FigurePart("hat pompon", brush => brush.Form(Oval(0, 402, 74, 40), Palette.HatBand, 24)) { Mark = Mark.Green, IsSpare = true },
    ]) { Mode = BlendMode.Normal };
}
