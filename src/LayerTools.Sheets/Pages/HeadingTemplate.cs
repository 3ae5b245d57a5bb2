using System.Globalization;
using System.Text.RegularExpressions;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>Fills the title block in.</summary>
internal static class HeadingTemplate
{
    private const string DefaultTitle = "{File}";
    private const string DefaultFacts = "{Date} \u00B7 {Canvas} \u00B7 {Counts}";
    private static readonly Regex Field = new(@"\{(\w*)\}", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));

    /// <param name="title">The title with fields; null for the file's name.</param>
    /// <param name="file">The file's name, or what stands for several.</param>
    /// <param name="date">The date.</param>
    /// <param name="canvas">The canvas in words; empty where there are several.</param>
    /// <param name="counts">What is counted, in words.</param>
    /// <param name="notes">What scale and view mean.</param>
    /// <exception cref="SheetException">The title has a field of another name.</exception>
    public static SheetHeading Fill(string? title, string file, DateTime date, string canvas, string counts, string notes)
    {
        var values = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
        {
            ["File"] = file,
            ["Date"] = date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["Canvas"] = canvas,
            ["Counts"] = counts,
        };
        var facts = canvas.Length > 0 ? DefaultFacts : DefaultFacts.Replace("{Canvas} \u00B7 ", string.Empty);
        return new SheetHeading(SafeText.Clean(FillIn(title ?? DefaultTitle)), SafeText.Clean(FillIn(facts)), notes);

        string FillIn(string template) => Field.Replace(template, match => values.TryGetValue(match.Groups[1].Value, out var value)
            ? value
            : throw SheetException.Refuse(null, $"{match.Value} is no field of a title.", "Use {File}, {Date}, {Canvas} or {Counts}."));
    }
}
