using LayerTools.Figure.Drawing;
using SkiaSharp;

namespace LayerTools.Figure.Parts;

/// <summary>The colours of the lighthouse keeper's apprentice.</summary>
internal static class Palette
{
    public static readonly Tone Skin = Tone.Of("#F2C7A5", "#C0705F");
    public static readonly Tone Hair = Tone.Of("#B0623E");
    public static readonly Tone HairBack = Tone.Of("#8E4C34");
    public static readonly Tone Hat = Tone.Of("#D5A045");
    public static readonly Tone HatBand = Tone.Of("#7C5434");
    public static readonly Tone Brass = Tone.Of("#E0BC66");
    public static readonly Tone Scarf = Tone.Of("#CF6450");
    public static readonly Tone Cream = Tone.Of("#EBDFC8", "#8F7A78");
    public static readonly Tone Coat = Tone.Of("#3B6076");
    public static readonly Tone CoatDark = Tone.Of("#2F4D62");
    public static readonly Tone Lining = Tone.Of("#A9824F");
    public static readonly Tone Trousers = Tone.Of("#565468");
    public static readonly Tone Boot = Tone.Of("#7A5138");
    public static readonly Tone Sole = Tone.Of("#463530");
    public static readonly Tone Iron = Tone.Of("#4A464E");
    public static readonly Tone Glass = Tone.Of("#F4DFA8");

    public static readonly SKColor Shadow = SKColor.Parse("#6B5A86");
    public static readonly SKColor SkinShadow = SKColor.Parse("#C98F86");
    public static readonly SKColor Shine = SKColor.Parse("#FFE9C4");
    public static readonly SKColor Blush = SKColor.Parse("#F09A8C");
    public static readonly SKColor Lash = SKColor.Parse("#3A2430");
    public static readonly SKColor Flame = SKColor.Parse("#FFD27A");
    public static readonly SKColor Pencil = SKColor.Parse("#5B6FA8");
    public static readonly SKColor GuideLine = SKColor.Parse("#49B6C8");
}
