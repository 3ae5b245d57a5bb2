using LayerTools.Figure.Drawing;
using SkiaSharp;
using static LayerTools.Figure.Drawing.Outlines;

namespace LayerTools.Figure.Parts;

/// <summary>Small parts that make a figure of any number of layers: strokes of paint, stitches, strands, drops of spray. Invented, and the same in every run.</summary>
internal static class DetailParts
{
    private static readonly (string Group, string Behind, Func<int, FigurePart> Create)[] Kinds =
    [
        ("Coat front", "lapel R", number => new FigurePart($"paint {number}", brush => Paint(brush, number)) { IsWash = true }),
        ("後ろ髪", "", number => new FigurePart($"strand_{number}", brush => Strand(brush, number, Palette.HairBack))),
        ("Coat front", "lapel R", number => new FigurePart($"stitch {number} copy", brush => Stitches(brush, number)) { IsWash = true }),
        ("Coat front", "lapel R", number => new FigurePart($"Layer {number + 100}", brush => Spray(brush, number)) { IsWash = true }),
        ("Torso", "", number => new FigurePart($"knit copy {number}", brush => Loop(brush, number)) { IsWash = true }),
        ("Coat back", "coat tail R", number => new FigurePart($"裏地 {number}", brush => Fold(brush, number)) { IsWash = true }),
    ];

    /// <summary>Adds that many layers: each directly behind a named one, or in front of what its group holds.</summary>
    public static void Add(List<FigurePart> tree, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var (group, behind, create) = Kinds[i % Kinds.Length];
            var siblings = tree.Single(part => part.Name == group).Children;
            siblings.Insert(siblings.FindIndex(part => part.Name == behind) + 1, create(i + 1));
        }
    }

    private static SKPath CoatShape(int number)
    {
        var panel = CoatParts.PanelShape();
        return number % 2 == 0 ? panel : Mirror(panel);
    }

    private static void Paint(Brush brush, int number)
    {
        var side = number % 2 == 0 ? 1 : -1;
        var (x, y) = (side * Chance.Between(320, 640, number, 0), Chance.Between(3200, 4250, number, 1));
        var color = number % 3 == 0 ? Palette.Coat.Shade : Palette.Coat.Light;
        brush.Inside(CoatShape(number), () => brush.Glow(x, y, Chance.Between(120, 330, number, 2), Chance.Between(160, 420, number, 3), color, 0.08f));
    }

    private static void Strand(Brush brush, int number, Tone tone)
    {
        var side = number % 4 < 2 ? 1 : -1;
        var x = side * Chance.Between(380, 700, number, 0);
        var foot = Chance.Between(1900, 2250, number, 1);
        var spine = FormattableString.Invariant($"{x * 0.8f:0},1150 {x * 1.04f:0},1500 {x:0},{foot - 300:0} {x * 1.03f:0},{foot:0}");
        brush.Form(Ribbon(spine, 30, Chance.Between(44, 80, number, 2), 40, 0), tone, 20, 6);
    }

    private static void Stitches(Brush brush, int number)
    {
        var side = number % 4 < 2 ? 1 : -1;
        var top = Chance.Between(3200, 4150, number, 0);
        for (var i = 0; i < 5; i++)
        {
            var y = top + i * 34;
            // The coat's side edge runs from 610 at the belt to 880 at the hem.
            var x = side * (588 + (y - 3060) * 0.19f);
            brush.Fill(Ribbon(FormattableString.Invariant($"{x:0},{y:0} {x + side * 4:0},{y + 20:0}"), 7, 7), Palette.Coat.Light, 0.55f);
        }
    }

    private static void Spray(Brush brush, int number)
    {
        for (var i = 0; i < 7; i++)
        {
            var x = Chance.Between(300, 700, number, i) * (number % 4 < 2 ? 1 : -1);
            var y = Chance.Between(3250, 4250, number, i + 20);
            brush.Inside(CoatShape(number % 4 < 2 ? 0 : 1), () => brush.Glow(x, y, 14 + i * 2, 14 + i * 2, Palette.Coat.Light, 0.16f));
        }
    }

    private static void Loop(Brush brush, int number)
    {
        var (x, y) = (Chance.Between(-380, 380, number, 0), Chance.Between(2300, 3380, number, 1));
        for (var i = 0; i < 6; i++)
            brush.Stroke(FormattableString.Invariant($"{x - 22:0},{y + i * 24:0} {x:0},{y + i * 24 + 20:0} {x + 22:0},{y + i * 24:0}"), Palette.Cream.Shade, 8, 0.35f);
    }

    private static void Fold(Brush brush, int number)
    {
        var x = Chance.Between(-480, 480, number, 0);
        brush.Fill(Ribbon(FormattableString.Invariant($"{x * 0.8f:0},3000 {x * 0.9f:0},3600 {x:0},4190"), 10, Chance.Between(40, 110, number, 1), 20), Palette.Lining.Shade, 0.18f, 16);
    }
}
