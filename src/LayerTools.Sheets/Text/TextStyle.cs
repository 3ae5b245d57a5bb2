namespace LayerTools.Sheets.Text;

/// <summary>How a line of text is set.</summary>
/// <param name="Size">Size of the type, px.</param>
/// <param name="LineHeight">Height of the line, px.</param>
/// <param name="IsBold">Whether the heavy cut is used.</param>
internal sealed record TextStyle(int Size, int LineHeight, bool IsBold = false);
