namespace LayerTools.Sheets.Text;

/// <summary>A line of text as glyphs in the order in which they stand.</summary>
internal sealed record ShapedLine(IReadOnlyList<ShapedRun> Runs, double Width);
