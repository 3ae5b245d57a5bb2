using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using LayerTools.Errors;
using LayerTools.Figure;
using LayerTools.Figure.Parts;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Sheets.Reports;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Reports;

public sealed class LayerReportTests : IDisposable
{
    private const string Script = "<script>alert(1)</script>";

    private readonly TemporaryFolder folder = new();

    private string PagePath => folder["out/report.html"];

    public void Dispose() => folder.Dispose();

    [Fact]
    public void What_files_say_is_text()
    {
        var file = PaintedFile.Save(folder, "a & b.psd", 64, 64, Painting.Of(Script).Rectangle(4, 4, 20, 20), Painting.Of("\" onerror=\"x").Rectangle(30, 4, 20, 20));
        var page = Write(new ReportOptions { Title = "<b>Title</b>", WithRemedies = true }, file);
        Assert.Single(Regex.Matches(page, "<script"));
        Assert.Contains("<bdi>&lt;script&gt;alert(1)&lt;/script&gt;</bdi>", page);
        Assert.Contains("<bdi>&quot; onerror=&quot;x</bdi>", page);
        Assert.Contains("<bdi>a &amp; b.psd</bdi>", page);
        Assert.Contains("<h1>&lt;b&gt;Title&lt;/b&gt;</h1>", page);
        Assert.DoesNotContain("<b>", page);
    }

    [Fact]
    public void What_changed_since_the_delivery_before_is_told()
    {
        var before = Draw("hero.psd");
        var now = LayerFiles.Read(before.Path);
        now.GetLayers().First(layer => layer.Name == "Face").Name = Script;
        using var report = new LayerReport(PagePath, new ReportOptions());
        Assert.Empty(report.Add(now, before, cancellation: TestContext.Current.CancellationToken));
        report.Complete(TestContext.Current.CancellationToken);
        var page = File.ReadAllText(PagePath);
        Assert.Contains("1 layer changed", page);
        Assert.Contains("It was called &#x27;Face&#x27;.", page);
        Assert.Single(Regex.Matches(page, "<script"));
    }

    [Theory]
    [InlineData("bell\u0007", "bell\u2407")]
    [InlineData("a\u202Eb", "a&#xFFFD;b")]
    [InlineData("a\u200Eb\u2067c", "a&#xFFFD;b&#xFFFD;c")]
    [InlineData("\u05D9\u05D3", "\u05D9\u05D3")]
    [InlineData("\u624B", "\u624B")]
    [InlineData("\uD83D\uDE00", "&#x1F600;")]
    [InlineData("", "(no name)")]
    public void Names_show_what_is_hidden_in_them_and_turn_nothing_around_them(string name, string shown)
    {
        var page = Write(new ReportOptions(), ModelBuilder.File(ModelBuilder.Pixel(name)));
        Assert.Contains($"<bdi>{shown}</bdi>", page.Replace("\uFFFD", "&#xFFFD;"));
    }

    /// <summary>Not in the table above, since test runners hand texts on as UTF-8, which has no lone halves.</summary>
    [Fact]
    public void A_lone_half_of_a_pair_is_shown_as_unreadable() =>
        Assert.Contains("<bdi>half \uFFFD</bdi>", Write(new ReportOptions(), ModelBuilder.File(ModelBuilder.Pixel("half \uD83D"))).Replace("&#xFFFD;", "\uFFFD"));

    [Fact]
    public void Only_the_page_s_own_script_may_run_and_nothing_may_be_loaded()
    {
        var page = Write(new ReportOptions(), ModelBuilder.File(ModelBuilder.Pixel("Hat")));
        var script = Regex.Match(page, "<script>(.*?)</script>", RegexOptions.Singleline).Groups[1].Value;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
        Assert.Contains($"content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'\"", page);
        var markup = page.Replace(script, string.Empty);
        Assert.DoesNotMatch(@"<[^>]*\son\w+=", markup);
        Assert.DoesNotMatch("https?:|url\\(|@import|<link|<iframe|<object", markup);
        Assert.All(Regex.Matches(page, " src=\"([^\"]{0,30})"), match => Assert.StartsWith("data:image/webp;base64,", match.Groups[1].Value));
    }

    [Fact]
    public void Headings_tables_and_links_hold_together()
    {
        var hero = Draw("hero.psd");
        var page = Write(new ReportOptions { Measures = new HashSet<ReportMeasure>(Enum.GetValues<ReportMeasure>()) }, hero, Draw("other.psd"));
        var levels = Regex.Matches(page, @"<h(\d)").Select(match => match.Groups[1].Value[0] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));

        var tables = Regex.Matches(page, "<table.*?</table>", RegexOptions.Singleline);
        Assert.True(tables.Count >= 2 * 6);
        Assert.All(tables, table => Assert.Contains("<caption", table.Value));
        Assert.DoesNotMatch("<th[ >](?![^>]*scope=)", page.Replace("<thead", string.Empty));

        var ids = Regex.Matches(page, " id=\"([^\"]+)\"").Select(match => match.Groups[1].Value).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(Regex.Matches(page, "(?:href=\"#|aria-labelledby=\"|for=\")([^\"]+)\""), match => Assert.Contains(match.Groups[1].Value, ids));
        foreach (var tag in new[] { "<main", "<header", "<footer", "<title>", "lang=\"en\"", "class=\"skip\"" }) Assert.Single(Regex.Matches(page, tag));
        foreach (var words in new[] { "Symmetry", "Painted underneath", "Detail", "Textures", "Findings", "Layers" }) Assert.Equal(2, Regex.Count(page, $"<h4>{words}</h4>"));
    }

    [Fact]
    public void What_was_not_asked_for_is_not_there()
    {
        var page = Write(new ReportOptions(), Draw("hero.psd"));
        Assert.DoesNotContain("<h4>Symmetry", page);
        Assert.DoesNotContain("What to do", page);
        Assert.DoesNotContain(folder.Root, page);
        Assert.Contains(folder.Root, Write(new ReportOptions { WithRemedies = true, Force = true }, Draw("again.psd")).Replace("&#x2F;", "/"));
    }

    [Fact]
    public void A_file_that_cannot_be_read_is_listed_without_its_folder()
    {
        var damaged = SharedFiles.Damaged.First(path => Path.GetFileName(path) == "layer-count.psd");
        var error = Assert.Throws<LayeredFileException>(() => LayerFiles.Read(damaged));
        using var report = new LayerReport(PagePath, new ReportOptions());
        report.AddFailure(damaged, error);
        report.Add(ModelBuilder.File(ModelBuilder.Pixel("Hat")), cancellation: TestContext.Current.CancellationToken);
        var result = report.Complete(TestContext.Current.CancellationToken);
        Assert.Equal((1, 1), (result.FileCount, result.FailureCount));
        var page = File.ReadAllText(PagePath);
        Assert.Contains("<bdi>layer-count.psd</bdi>", page);
        Assert.Contains("could not be read", page);
        Assert.Contains(error.Problem.Substring(0, 12), page);
        Assert.DoesNotContain(Path.GetDirectoryName(damaged)!, page);
    }

    [Fact]
    public void A_part_that_cannot_be_read_is_told_of_and_the_rest_is_there()
    {
        var bad = ModelBuilder.Pixel("Bad");
        bad.Planes[1] = new Plane(PlaneRole.Color0, 1, new MemoryBytes([0, 9]));
        using var report = new LayerReport(PagePath, new ReportOptions());
        var errors = report.Add(ModelBuilder.File(ModelBuilder.Pixel("Hat"), bad), cancellation: TestContext.Current.CancellationToken);
        Assert.NotEmpty(errors);
        report.Complete(TestContext.Current.CancellationToken);
        var page = File.ReadAllText(PagePath);
        Assert.Contains("cannot be read", page);
        Assert.Contains("not read in full", page);
        Assert.Contains("What could not be told", page);
        Assert.Single(Regex.Matches(page, "<img"));
    }

    [Fact]
    public void An_empty_file_and_groups_alone_are_told_of()
    {
        var page = Write(new ReportOptions(), ModelBuilder.File(), ModelBuilder.File(ModelBuilder.Group("Head", ModelBuilder.Group("Eyes"))));
        Assert.Contains("not known", page);
        Assert.Contains("<bdi>Eyes</bdi>", page);
    }

    [Fact]
    public void Files_of_one_name_are_two()
    {
        var page = Write(new ReportOptions(), ModelBuilder.File(ModelBuilder.Pixel("Hat")), ModelBuilder.File(ModelBuilder.Pixel("Hat")));
        Assert.Contains("id=\"file-1\"", page);
        Assert.Contains("id=\"file-2\"", page);
    }

    [Fact]
    public void A_page_is_not_replaced_unless_asked_and_must_end_like_one()
    {
        Write(new ReportOptions(), ModelBuilder.File());
        Assert.Contains("-Force", Assert.Throws<LayeredFileException>(() => new LayerReport(PagePath, new ReportOptions())).Message);
        Write(new ReportOptions { Force = true }, ModelBuilder.File());
        Assert.Throws<LayeredFileException>(() => new LayerReport(folder["report.txt"], new ReportOptions()));
        Assert.Throws<LayeredFileException>(() => new LayerReport(Directory.CreateDirectory(folder["dir.html"]).FullName, new ReportOptions()));
    }

    [Fact]
    public void What_is_not_completed_leaves_nothing()
    {
        using (var report = new LayerReport(PagePath, new ReportOptions())) report.Add(ModelBuilder.File(ModelBuilder.Pixel("Hat")), cancellation: TestContext.Current.CancellationToken);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
        using var stopped = new LayerReport(PagePath, new ReportOptions());
        using var stopping = new CancellationTokenSource();
        stopping.Cancel();
        Assert.Throws<OperationCanceledException>(() => stopped.Add(ModelBuilder.File(ModelBuilder.Pixel("Hat")), cancellation: stopping.Token));
        Assert.Equal(0, stopped.Count);
    }

    /// <summary>50 files of 100 parts must stay below 15 MB, so 3 kB are free for each part.</summary>
    [Fact]
    public void A_painted_figure_takes_less_than_3_kB_a_part()
    {
        FigureWriter.Write(folder["keeper.psd"], Keeper.Create(null), 0.1f);
        var page = Write(new ReportOptions(), LayerFiles.Read(folder["keeper.psd"]));
        var parts = Regex.Count(page, "<img");
        Assert.InRange(parts, 100, 200);
        Assert.InRange(page.Length / parts, 500, 3_000);
    }

    private LayerFile Draw(string name) => PaintedFile.Save(folder, name, 120, 100,
        Painting.Of("Eye L").Ellipse(70, 20, 20, 10), Painting.Of("Eye R").Ellipse(30, 20, 20, 10), Painting.Of("Face").Ellipse(20, 5, 80, 90, rgb: 0xe0b090));

    private string Write(ReportOptions options, params LayerFile[] files)
    {
        using var report = new LayerReport(PagePath, options);
        foreach (var file in files) report.Add(file, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(PagePath, report.Complete(TestContext.Current.CancellationToken).Path);
        return File.ReadAllText(PagePath);
    }
}
