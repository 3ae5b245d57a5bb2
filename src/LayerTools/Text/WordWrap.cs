using System.Text;

namespace LayerTools.Text;

/// <summary>Breaks text into lines of a terminal.</summary>
internal static class WordWrap
{
    /// <summary>The lines: broken after spaces and slashes; a piece that is longer than a line is cut between signs.</summary>
    /// <param name="text">A text on one line.</param>
    /// <param name="width">Columns of a line, at least 2.</param>
    public static IEnumerable<string> Break(string text, int width)
    {
        var line = new StringBuilder();
        foreach (var piece in Split(text).SelectMany(piece => Cut(piece, width)))
        {
            if (line.Length > 0 && TextWidth.Measure(line + piece.TrimEnd(' ')) > width)
            {
                yield return line.ToString().TrimEnd(' ');
                line.Clear();
            }

            line.Append(piece);
        }

        yield return line.ToString().TrimEnd(' ');
    }

    private static IEnumerable<string> Split(string text)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is not (' ' or '/')) continue;
            yield return text.Substring(start, i + 1 - start);
            start = i + 1;
        }

        yield return text.Substring(start);
    }

    private static IEnumerable<string> Cut(string piece, int width)
    {
        while (TextWidth.Measure(piece.TrimEnd(' ')) > width)
        {
            var length = piece.Length;
            while (TextWidth.Measure(piece.Substring(0, length)) > width) length -= char.IsLowSurrogate(piece[length - 1]) ? 2 : 1;
            yield return piece.Substring(0, length);
            piece = piece.Substring(length);
        }

        yield return piece;
    }
}
