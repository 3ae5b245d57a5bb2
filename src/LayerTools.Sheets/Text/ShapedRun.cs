using SkiaSharp;

namespace LayerTools.Sheets.Text;

/// <summary>Glyphs of one typeface, placed from the start of their line.</summary>
/// <param name="Typeface">The typeface.</param>
/// <param name="Glyphs">The glyphs from left to right.</param>
/// <param name="Positions">Where each stands.</param>
/// <param name="Text">The text they were made from, as UTF-8, so that documents can be searched.</param>
/// <param name="Clusters">For each glyph the byte of the text that it begins at.</param>
internal sealed record ShapedRun(SKTypeface Typeface, ushort[] Glyphs, SKPoint[] Positions, byte[] Text, uint[] Clusters);
