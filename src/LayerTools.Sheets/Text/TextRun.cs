namespace LayerTools.Sheets.Text;

/// <summary>A stretch of text that is read in one direction.</summary>
internal readonly record struct TextRun(string Text, bool IsRightToLeft);
