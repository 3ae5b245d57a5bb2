using System.Text.Encodings.Web;
using System.Text.Unicode;
using LayerTools.Names;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Reports;

/// <summary>Writes HTML. Only <see cref="Markup"/> is written as it stands, and takes what the code itself says; all else is encoded.</summary>
internal sealed class HtmlWriter(TextWriter writer)
{
    // Letters of all scripts stay as they are, so that the page can be searched and is half as large; what HTML means something by is encoded all the same.
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>Text from outside as it can be shown: controls become visible signs, and what would turn or hide the text around it becomes U+FFFD.</summary>
    public static string Show(string text) => SafeText.Clean(PrintableText.Of(text));

    /// <summary>Markup of our own.</summary>
    public HtmlWriter Markup(string markup)
    {
        writer.Write(markup);
        return this;
    }

    /// <summary>Words, perhaps with names from files in them.</summary>
    public HtmlWriter Text(string text)
    {
        writer.Write(Encoder.Encode(Show(text)));
        return this;
    }

    /// <summary>A name from a file: apart from the direction of the text around it.</summary>
    public HtmlWriter Name(string name) => Markup("<bdi>").Text(name.Length == 0 ? "(no name)" : name).Markup("</bdi>");

    /// <summary>An attribute, with a space before it.</summary>
    public HtmlWriter Attribute(string name, string value) => Markup($" {name}=\"").Text(value).Markup("\"");

    /// <summary>An element that holds nothing but text.</summary>
    /// <param name="tag">Its tag, and attributes of our own: <c>p class="note"</c>.</param>
    /// <param name="text">The text.</param>
    public HtmlWriter Element(string tag, string text)
    {
        var end = tag.IndexOf(' ');
        return Markup($"<{tag}>").Text(text).Markup($"</{(end < 0 ? tag : tag.Substring(0, end))}>");
    }
}
