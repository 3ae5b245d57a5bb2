using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace LayerTools.Sheets.Reports;

/// <summary>Puts a report together: head, overview, and the pieces of all files.</summary>
internal sealed class ReportPage(ReportOptions options, IReadOnlyList<OverviewEntry> entries, ReportSpool spool)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes the page; the stream stays open.</summary>
    public void Write(Stream stream, CancellationToken cancellation)
    {
        using var writer = new StreamWriter(stream, Utf8, 1 << 14, leaveOpen: true);
        var html = new HtmlWriter(writer);
        WriteHead(html);
        WriteBanner(html);
        html.Markup("<main id=\"main\">\n");
        OverviewTable.Write(html, entries);
        html.Markup("<section aria-labelledby=\"files\"><h2 id=\"files\">Files</h2>\n");
        for (var i = 0; i < entries.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            html.Markup(FormattableString.Invariant($"<details class=\"file\" id=\"file-{i + 1}\"{(entries.Count == 1 ? " open" : string.Empty)}>"));
            writer.Flush();
            spool.CopyTo(entries[i].Section, stream);
            html.Markup("</details>\n");
        }

        html.Markup("</section>\n</main>\n").Element("footer", "Made by LayerTools. The page holds everything it shows and asks no other place for anything.").Markup("\n");
        html.Markup("<script>").Markup(Script).Markup("</script>\n</body>\n</html>\n");
    }

    /// <summary>The script of the page.</summary>
    internal static string Script { get; } = Load("report.js");

    private static string Style { get; } = ReportColor.Declare() + Load("report.css");

    /// <summary>Nothing may be loaded but pictures inside the page, and nothing may run but its own script (Content Security Policy Level 3, 'hash-source').</summary>
    internal static string Policy { get; } = $"default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src 'sha256-{Hash(Script)}'; base-uri 'none'; form-action 'none'";

    private void WriteHead(HtmlWriter html)
    {
        html.Markup("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"").Markup(Policy).Markup("\">\n");
        html.Markup("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<meta name=\"referrer\" content=\"no-referrer\">\n");
        html.Element("title", options.Title).Markup("\n<style>\n").Markup(Style).Markup("</style>\n</head>\n<body>\n");
        ReportSign.WriteAll(html);
    }

    private void WriteBanner(HtmlWriter html)
    {
        html.Markup("<a class=\"skip\" href=\"#main\">Skip to the overview</a>\n<header>").Element("h1", options.Title);
        html.Markup("<p><time").Attribute("datetime", options.Time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture)).Markup(">");
        html.Text(options.Time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)).Markup("</time>. ");
        html.Text(string.Join(", ", Sums())).Text(". ");
        html.Text("Checked by the profile ").Name(options.Profile.Name).Text(".").Markup("</p></header>\n");
    }

    private IEnumerable<string> Sums()
    {
        var read = entries.Where(entry => !entry.IsUnread).ToList();
        yield return ReportWords.Count(read.Count, "file");
        yield return ReportWords.Count(read.Sum(entry => entry.Sum?.Parts ?? 0), "part");
        var counts = read.Where(entry => entry.Findings is not null).Select(entry => entry.Findings!.Value).ToList();
        yield return ReportWords.Count(counts.Sum(count => count.Errors), "error");
        yield return ReportWords.Count(counts.Sum(count => count.Warnings), "warning");
        yield return ReportWords.Count(counts.Sum(count => count.Notes), "note");
        if (read.Count < entries.Count) yield return FormattableString.Invariant($"{entries.Count - read.Count} that could not be read");
    }

    /// <summary>Line ends are those that browsers make of any before they hash.</summary>
    private static string Load(string name)
    {
        using var stream = typeof(ReportPage).Assembly.GetManifestResourceStream("Reports/" + name)!;
        using var reader = new StreamReader(stream, Utf8);
        return reader.ReadToEnd().Replace("\r\n", "\n");
    }

    private static string Hash(string text)
    {
#if NET8_0_OR_GREATER
        return Convert.ToBase64String(SHA256.HashData(Utf8.GetBytes(text)));
#else
        using var sha = SHA256.Create();
        return Convert.ToBase64String(sha.ComputeHash(Utf8.GetBytes(text)));
#endif
    }
}
