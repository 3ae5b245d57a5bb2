using System.Text;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Rendering;

/// <summary>Writes a sheet as one HTML file with everything inside: real text, pictures as WebP, no script, nothing fetched.</summary>
internal sealed class HtmlSheet : ISheetOutput
{
    /// <summary>Longest name or path on the page, characters; the whole of it is shown when pointed at.</summary>
    private const int LongestText = 90;

    private static readonly TextStyle AnyStyle = new(1, 1);
    private static readonly ITextRuler Counter = new CharacterCounter();
    private readonly string path;
    private readonly SheetOptions options;
    private readonly Palette palette;
    private readonly AtomicFile file;
    private readonly StreamWriter writer;

    /// <param name="path">Where the file goes.</param>
    /// <param name="options">How the sheet looks.</param>
    /// <param name="grid">How large tiles are.</param>
    /// <param name="heading">The title block.</param>
    public HtmlSheet(string path, SheetOptions options, SheetGrid grid, SheetHeading heading)
    {
        (this.path, this.options, palette) = (path, options, Palette.For(options.Background));
        file = new AtomicFile(path);
        file.Write(_ => { }, 0);
        writer = new StreamWriter(new FileStream(file.TemporaryPath, FileMode.Open, FileAccess.Write, FileShare.None, 1 << 16), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { NewLine = "\n" };
        Write(HtmlSheetStyle.Begin(options, grid, palette, heading));
    }

    public void Add(int page, IReadOnlyList<PageCell> cells)
    {
        if (cells.Count == 0) Write($"<p>{HtmlText.Escape(SubjectWords.Nothing(options.Content))}</p>\n");
        var together = options.Arrangement == SheetArrangement.Pairs ? 2 : 1;
        for (var first = 0; first < cells.Count; first += together)
        {
            var row = string.Concat(cells.Skip(first).Take(together).Select(Describe));
            Write(together == 1 ? row : $"<div class=\"pair\">\n{row}</div>\n");
        }
    }

    public IReadOnlyList<string> Commit()
    {
        Write(HtmlSheetStyle.End);
        FileAccessErrors.Wrap(path, () =>
        {
            writer.Flush();
            ((FileStream)writer.BaseStream).Flush(flushToDisk: true);
            writer.Dispose();
            return true;
        });
        file.Commit(options.Force);
        return [path];
    }

    public void Dispose()
    {
        try
        {
            writer.Dispose();
        }
        catch (IOException)
        {
            // What could not be written was told already; the file is thrown away.
        }

        file.Dispose();
    }

    private string Describe(PageCell cell)
    {
        var html = new StringBuilder("<figure><div class=\"tiles\">");
        var name = SubjectWords.Name(cell.Subject);
        if (options.View != SheetView.InPlace) AddTile(html, cell, cell.Picture, cell.Fit?.Zoom ?? 1, name);
        if (options.View != SheetView.Alone) AddTile(html, cell, cell.Placed, cell.PlacedFit?.Zoom ?? 1, $"{name} in its place in the figure");
        html.Append("</div><figcaption>");
        AddLine(html, "strong", name);
        AddLine(html, "span class=\"quiet\"", SubjectWords.Path(cell.Subject));
        if (SubjectWords.Size(cell, options) is { Length: > 0 } size) AddLine(html, "span", size);
        var color = cell.Subject is { IsMissing: false, Layer: { } layer } ? CellWords.GetColor(layer.Mark) : null;
        html.Append("<span class=\"state\">").Append(HtmlShapes.Draw(SubjectWords.Shape(cell.Subject), color)).Append(HtmlText.Escape(SubjectWords.State(cell.Subject))).Append("</span>");
        return html.Append("</figcaption></figure>\n").ToString();
    }

    private void AddTile(StringBuilder html, PageCell cell, Raster? picture, int zoom, string words)
    {
        if (picture is null)
        {
            html.Append(cell.Subject.IsMissing ? "<div class=\"tile missing\"><span>" : "<div class=\"tile plain\"><span>").Append(HtmlText.Escape(SubjectWords.Absence(cell))).Append("</span></div>");
            return;
        }

        var isLost = palette.Pattern == GroundPattern.Plain && TileMatch.IsLost(picture, palette.Tile);
        html.Append(isLost ? "<div class=\"tile lost\">" : "<div class=\"tile\">");
        html.Append("<img alt=\"").Append(HtmlText.Escape(words)).Append('"');
        html.Append(FormattableString.Invariant($" width=\"{picture.Width * zoom}\" height=\"{picture.Height * zoom}\""));
        if (zoom > 1) html.Append(" class=\"hard\"");
        html.Append(" src=\"data:image/webp;base64,").Append(WebpPicture.EncodeBase64(picture, path)).Append("\">");
        if (isLost) html.Append("<span>same colour as the background</span>");
        html.Append("</div>");
    }

    private static void AddLine(StringBuilder html, string tag, string words)
    {
        var shown = MiddleShortener.Fit(words, AnyStyle, LongestText, Counter);
        html.Append('<').Append(tag).Append(" dir=\"auto\"");
        if (shown != words) html.Append(" title=\"").Append(HtmlText.Escape(words)).Append('"');
        html.Append('>').Append(HtmlText.Escape(shown)).Append("</").Append(tag.Split(' ')[0]).Append('>');
    }

    private void Write(string text) => FileAccessErrors.Wrap(path, () =>
    {
        writer.Write(text);
        return true;
    });

    /// <summary>Each character is 1 wide.</summary>
    private sealed class CharacterCounter : ITextRuler
    {
        public double Measure(string text, TextStyle style) => Graphemes.Split(text).Count;
    }
}
