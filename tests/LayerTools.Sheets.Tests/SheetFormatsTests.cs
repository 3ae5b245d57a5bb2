using System.Diagnostics;
using System.Text.RegularExpressions;
using ImageMagick;
using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests;

/// <summary>Each format is read back by a reader of other make: Magick.NET for pictures, poppler's tools for PDF.</summary>
public sealed class SheetFormatsTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}");

    public void Dispose()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("sheet.png", MagickFormat.Png)]
    [InlineData("sheet.jpg", MagickFormat.Jpeg)]
    [InlineData("sheet.JPEG", MagickFormat.Jpeg)]
    [InlineData("sheet.webp", MagickFormat.WebP)]
    public void The_extension_says_the_format(string name, MagickFormat format)
    {
        var path = Write(Figure(3), name).Paths.Single();
        using var image = new MagickImage(path);
        Assert.Equal(format, image.Format);
        using var pixels = image.GetPixels();
        var grey = pixels.GetValue(50, 50 + SheetStyle.Screen.HeaderHeight)!;
        Assert.All(grey.Take(3), sample => Assert.InRange(sample, 0x75, 0x79));
    }

    [Theory]
    [InlineData("A4", false, 1588, 2246)]
    [InlineData("A4", true, 2246, 1588)]
    [InlineData("a3", false, 2246, 3174)]
    [InlineData("Letter", false, 1632, 2112)]
    [InlineData("Screen", false, 1920, 1080)]
    [InlineData("1000x700", false, 700, 1000)]
    [InlineData("1000x700", true, 1000, 700)]
    public void Pages_have_the_size_that_was_asked_for(string size, bool landscape, int width, int height)
    {
        var result = Write(Figure(40), "sheet.png", new SheetOptions { PageSize = SheetPageSize.Parse(size).Turn(landscape || size == "Screen") });
        Assert.Equal(result.PageCount, result.Paths.Count);
        Assert.All(result.Paths, path => Assert.Equal(((uint)width, (uint)height), Measure(path)));
    }

    [Fact]
    public void A_PDF_is_one_document_whose_text_another_reader_finds()
    {
        Assert.SkipUnless(Tool.IsThere("pdftotext"), "pdftotext (Debian: poppler-utils) is not installed.");
        string[] names = ["figure affix", "\u5E3D\u5B50", "\u041F\u043B\u0430\u0449 L", "Arm \u0130 L"];
        var result = Write(ModelBuilder.File([.. names.Select(name => ModelBuilder.Pixel(name)), .. Enumerable.Range(1, 30).Select(i => ModelBuilder.Pixel($"Layer {i}"))]), "sheet.pdf");
        Assert.Equal(["sheet.pdf"], result.Paths.Select(Path.GetFileName));
        Assert.True(result.PageCount > 1);
        Assert.Contains(FormattableString.Invariant($"Pages:           {result.PageCount}"), Tool.Run("pdfinfo", result.Paths[0]), StringComparison.Ordinal);
        var text = Tool.Run("pdftotext", result.Paths[0], "-");
        Assert.All(names.Append("Layer 30").Append($"page 1 of {result.PageCount}"), name => Assert.Contains(name, text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_PDF_page_looks_like_the_same_page_as_PNG()
    {
        Assert.SkipUnless(Tool.IsThere("pdftoppm"), "pdftoppm (Debian: poppler-utils) is not installed.");
        var options = new SheetOptions { PageSize = SheetPageSize.A4, Background = SheetBackground.Halves };
        var pdf = Write(Figure(4), "sheet.pdf", options).Paths[0];
        using var ours = new MagickImage(Write(Figure(4), "sheet.png", options).Paths[0]);
        Tool.Run("pdftoppm", "-r", "192", "-png", "-singlefile", pdf, Path.Combine(folder, "theirs"));
        using var theirs = new MagickImage(Path.Combine(folder, "theirs.png"));
        theirs.Extent(ours.Width, ours.Height);
        Assert.True(ours.Compare(theirs, ErrorMetric.MeanAbsolute) < 0.01);
    }

    [Fact]
    public void HTML_is_one_file_that_fetches_nothing_and_takes_names_as_text()
    {
        const string Evil = "<script>alert(1)</script> & \"'";
        var path = Write(ModelBuilder.File(ModelBuilder.Pixel(Evil), ModelBuilder.Pixel("\u05E2\u05D9\u05DF L")), "sheet.html", new SheetOptions { Title = Evil }).Paths.Single();
        var html = File.ReadAllText(path);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;&#39;", html, StringComparison.Ordinal);
        Assert.Contains("dir=\"auto\">\u05E2\u05D9\u05DF L</strong>", html, StringComparison.Ordinal);
        Assert.All(Regex.Matches(html, "(?:src|href)=\"([^\"]*)\"").Select(match => match.Groups[1].Value), target => Assert.StartsWith("data:image/webp;base64,", target, StringComparison.Ordinal));
        Assert.DoesNotContain("http:", html, StringComparison.Ordinal);
        Assert.DoesNotContain("https:", html, StringComparison.Ordinal);
    }

    [Fact]
    public void HTML_keeps_pairs_together_however_wide_the_window_is()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm L"), ModelBuilder.Pixel("Nose"), ModelBuilder.Pixel("Arm R"), ModelBuilder.Pixel("Leg R"));
        var html = File.ReadAllText(Write(file, "sheet.html", new SheetOptions { Arrangement = SheetArrangement.Pairs, View = SheetView.Both }).Paths[0]);
        var pairs = html.Split("<div class=\"pair\">").Skip(1).Select(pair => Regex.Matches(pair, "<strong[^>]*>([^<]*)<").Select(match => match.Groups[1].Value).ToArray());
        Assert.Equal([["Arm L", "Arm R"], ["no left part", "Leg R"], ["Nose"]], pairs);
    }

    [Fact]
    public void HTML_pictures_are_the_parts()
    {
        var html = File.ReadAllText(Write(Figure(2), "sheet.html").Paths[0]);
        foreach (Match match in Regex.Matches(html, "src=\"data:image/webp;base64,([^\"]*)\""))
        {
            using var image = new MagickImage(Convert.FromBase64String(match.Groups[1].Value));
            Assert.Equal((20u, 10u), (image.Width, image.Height));
        }
    }

    [Theory]
    [InlineData("sheet.pdf")]
    [InlineData("sheet.html")]
    [InlineData("sheet.webp")]
    public void A_sheet_that_is_stopped_or_fails_leaves_nothing(string name)
    {
        var file = Figure(30);
        using var stop = new CancellationTokenSource();
        var options = new SheetOptions { Progress = (done, _) => { if (done == 15) stop.Cancel(); } };
        Assert.ThrowsAny<OperationCanceledException>(() => SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, name), options, stop.Token));
        Assert.False(Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any());
    }

    [Theory]
    [InlineData("sheet.pdf")]
    [InlineData("sheet.html")]
    public void An_existing_document_is_kept_without_force(string name)
    {
        Write(Figure(1), name);
        Assert.Throws<SheetException>(() => Write(Figure(1), name));
        Write(Figure(1), name, new SheetOptions { Force = true });
        Assert.Single(Directory.GetFiles(folder));
    }

    [Theory]
    [InlineData("sheet.bmp")]
    [InlineData("sheet")]
    public void Other_formats_are_refused_with_what_is_possible(string name) =>
        Assert.Contains(".png, .jpg, .webp, .pdf or .html", Assert.Throws<SheetException>(() => Write(Figure(1), name)).Remedy, StringComparison.Ordinal);

    private static LayerFile Figure(int parts) => ModelBuilder.File([.. Enumerable.Range(1, parts).Select(i => ModelBuilder.Pixel($"Layer {i}", Bounds.FromSize(i, i, 20, 10)))]);

    private static (uint Width, uint Height) Measure(string path)
    {
        var info = new MagickImageInfo(path);
        return (info.Width, info.Height);
    }

    private SheetResult Write(LayerFile file, string name, SheetOptions? options = null) =>
        SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, name), options ?? new SheetOptions(), TestContext.Current.CancellationToken);

    private static class Tool
    {
        public static bool IsThere(string name) =>
            (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator).Any(place => File.Exists(Path.Combine(place, name)) || File.Exists(Path.Combine(place, name + ".exe")));

        public static string Run(string name, params string[] arguments)
        {
            var start = new ProcessStartInfo(name, arguments) { RedirectStandardOutput = true, StandardOutputEncoding = System.Text.Encoding.UTF8 };
            using var process = Process.Start(start)!;
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            return output;
        }
    }
}
