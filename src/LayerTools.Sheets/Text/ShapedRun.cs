using SkiaSharp;

namespace LayerTools.Sheets.Text;

/// <summary>Glyphs of one typeface, placed from the start of their line.</summary>
internal sealed record ShapedRun(SKTypeface Typeface, ushort[] Glyphs, SKPoint[] Positions);
