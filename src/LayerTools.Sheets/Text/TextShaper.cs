using System.Text;
using SkiaSharp;
using SkiaSharp.HarfBuzz;
using Buffer = HarfBuzzSharp.Buffer;
using Direction = HarfBuzzSharp.Direction;

namespace LayerTools.Sheets.Text;

/// <summary>Turns text into placed glyphs: direction by direction, font by font.</summary>
internal sealed class TextShaper : ITextRuler, IDisposable
{
    private readonly FontLibrary fonts;
    private readonly Dictionary<SKTypeface, SKShaper> shapers = [];
    private readonly Dictionary<(SKTypeface, int), SKFont> sizes = [];

    public TextShaper(FontLibrary fonts) => this.fonts = fonts;

    public double Measure(string text, TextStyle style) => Shape(text, style).Width;

    public ShapedLine Shape(string text, TextStyle style)
    {
        var runs = new List<ShapedRun>();
        var x = 0f;
        foreach (var directed in TextDirections.Split(text))
        {
            foreach (var (piece, typeface) in SplitByFont(directed, style.IsBold))
            {
                using var buffer = new Buffer();
                buffer.AddUtf16(piece);
                buffer.GuessSegmentProperties();
                buffer.Direction = directed.IsRightToLeft ? Direction.RightToLeft : Direction.LeftToRight;
                var shaped = GetShaper(typeface).Shape(buffer, x, 0, GetFont(typeface, style.Size));
                var (utf8, places) = Encode(piece);
                runs.Add(new ShapedRun(typeface, Array.ConvertAll(shaped.Codepoints, glyph => (ushort)glyph), shaped.Points, utf8, Array.ConvertAll(shaped.Clusters, unit => places[unit])));
                x += shaped.Width;
            }
        }

        return new ShapedLine(runs, x);
    }

    public SKFont GetFont(SKTypeface typeface, int size)
    {
        if (!sizes.TryGetValue((typeface, size), out var font))
        {
            font = new SKFont(typeface, size) { Edging = SKFontEdging.Antialias, Hinting = SKFontHinting.None, Subpixel = true };
            sizes.Add((typeface, size), font);
        }

        return font;
    }

    /// <summary>Height from the top of a line to where its letters stand, px, so that capitals sit in the middle of the line.</summary>
    public double GetBaseline(TextStyle style) => (style.LineHeight + GetFont(fonts.GetShipped(style.IsBold), style.Size).Metrics.CapHeight) / 2;

    public void Dispose()
    {
        foreach (var font in sizes.Values) font.Dispose();
        foreach (var shaper in shapers.Values) shaper.Dispose();
    }

    /// <summary>A text as UTF-8, and for each UTF-16 unit the byte that its character begins at.</summary>
    private static (byte[] Text, uint[] Places) Encode(string text)
    {
        var places = new uint[text.Length];
        var place = 0;
        for (var i = 0; i < text.Length; i++)
        {
            places[i] = (uint)place;
            // RFC 3629, section 3: bytes of a character; a lone surrogate becomes U+FFFD, which has three.
            if (char.IsSurrogatePair(text, i))
            {
                places[++i] = (uint)place;
                place += 4;
            }
            else
            {
                place += text[i] < 0x80 ? 1 : text[i] < 0x800 ? 2 : 3;
            }
        }

        return (Encoding.UTF8.GetBytes(text), places);
    }

    private SKShaper GetShaper(SKTypeface typeface)
    {
        if (!shapers.TryGetValue(typeface, out var shaper))
        {
            shaper = new SKShaper(typeface);
            shapers.Add(typeface, shaper);
        }

        return shaper;
    }

    /// <summary>Stretches of one font, from left to right as they stand.</summary>
    private List<(string Text, SKTypeface Typeface)> SplitByFont(TextRun run, bool isBold)
    {
        var pieces = new List<(StringBuilder Text, SKTypeface Typeface)>();
        foreach (var cluster in Graphemes.Split(run.Text))
        {
            var typeface = fonts.Choose(cluster, isBold);
            if (pieces.Count > 0 && ReferenceEquals(pieces[pieces.Count - 1].Typeface, typeface)) pieces[pieces.Count - 1].Text.Append(cluster);
            else pieces.Add((new StringBuilder(cluster), typeface));
        }

        if (run.IsRightToLeft) pieces.Reverse();
        return pieces.ConvertAll(piece => (piece.Text.ToString(), piece.Typeface));
    }
}
