using System.Text;

namespace LayerTools.Sheets.Rendering;

/// <summary>Makes any text safe between tags and in quoted attributes.</summary>
internal static class HtmlText
{
    public static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length + 16);
        foreach (var letter in text)
        {
            switch (letter)
            {
                case '&': safe.Append("&amp;"); break;
                case '<': safe.Append("&lt;"); break;
                case '>': safe.Append("&gt;"); break;
                case '"': safe.Append("&quot;"); break;
                case '\'': safe.Append("&#39;"); break;
                default: safe.Append(letter); break;
            }
        }

        return safe.ToString();
    }
}
