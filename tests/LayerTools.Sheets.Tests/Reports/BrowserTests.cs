using System.Diagnostics;
using System.Text.Json;
using LayerTools.Figure;
using LayerTools.Figure.Parts;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Sheets.Reports;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Reports;

/// <summary>A report in a real browser (Chromium, driven by playwright-core), and what axe-core says of it. Pictures are kept in <c>out/report</c> of the repository.</summary>
public sealed class BrowserTests
{
    private const string ScriptName = "<script>document.title='taken'</script>";

    private static readonly string Repository = Path.GetFullPath(Path.Combine(SharedFiles.FindFolder(Path.Combine("tests", "Fixtures")), "..", ".."));

    [Fact]
    public async Task A_report_works_in_a_browser_from_disk()
    {
        var modules = Environment.GetEnvironmentVariable("LAYERTOOLS_READERS") ?? Path.Combine(Repository, "out", "readers");
        var browser = Environment.GetEnvironmentVariable("LAYERTOOLS_BROWSER") ?? FindCommand("chromium", "chromium-browser");
        var node = FindCommand("node");
        if (browser is null) Assert.Skip("No chromium is on the PATH (Debian: apt-get install chromium).");
        if (node is null) Assert.Skip("node is not on the PATH.");
        if (!Directory.Exists(Path.Combine(modules, "node_modules", "playwright-core")) || !Directory.Exists(Path.Combine(modules, "node_modules", "axe-core")))
        {
            Assert.Skip("playwright-core and axe-core are not installed (npm install --prefix out/readers playwright-core axe-core).");
        }

        var output = Directory.CreateDirectory(Path.Combine(Repository, "out", "report")).FullName;
        var page = Path.Combine(output, "report.html");
        WriteReport(page);
        var seen = await Run(node, [Path.Combine(AppContext.BaseDirectory, "browser.mjs"), page, output, modules, browser]);

        Assert.Empty(Strings(seen, "console"));
        Assert.Empty(Strings(seen, "requests"));
        Assert.Equal(0, seen.GetProperty("dialogs").GetInt32());
        Assert.Equal("Lanterns, second delivery", seen.GetProperty("title").GetString());
        Assert.Equal(["keeper.psd", "small.psd", "layer-count.psd"], Strings(seen, "files"));

        Assert.Equal([ScriptName], Strings(seen, "scriptLayers"));
        Assert.Equal(["small.psd"], Strings(seen, "found"));
        Assert.Equal(["Trial", ScriptName], Strings(seen, "foundLayers"));
        Assert.StartsWith("1 of 3 files", seen.GetProperty("told").GetString(), StringComparison.Ordinal);
        Assert.Contains("Nothing", seen.GetProperty("foundNothing").GetString(), StringComparison.Ordinal);
        Assert.Equal(["layer-count.psd"], Strings(seen, "trouble"));

        var byParts = Strings(seen, "byParts");
        Assert.Equal("\u2013", byParts[0]);
        Assert.StartsWith("2", byParts[1], StringComparison.Ordinal);
        Assert.Equal(byParts.Reverse(), Strings(seen, "byPartsDown"));
        Assert.Equal(["Parts descending"], Strings(seen, "sortedBy"));

        Assert.Equal("skip", seen.GetProperty("firstFocus").GetString());
        Assert.Equal(["file-1"], Strings(seen, "opened"));
        Assert.Equal(0, seen.GetProperty("allOpen").GetInt32());
        Assert.True(seen.GetProperty("phoneOverflow").GetInt32() <= 0, "The page is wider than a phone.");
        Assert.False(seen.GetProperty("withoutScript").GetBoolean());

        foreach (var run in seen.GetProperty("axe").EnumerateObject()) Assert.True(run.Value.GetArrayLength() == 0, $"{run.Name}: {run.Value}");
    }

    private static void WriteReport(string page)
    {
        using var folder = new TemporaryFolder();
        var cancellation = TestContext.Current.CancellationToken;
        FigureWriter.Write(folder["keeper.psd"], Keeper.Create(null), 0.1f);
        var hostile = Painting.Of(ScriptName).Ellipse(20, 20, 60, 80, rgb: 0xb04030);
        var small = PaintedFile.Save(folder, "small.psd", 200, 160, hostile, Painting.Of("\u05D9\u05D3 \u05E9\u05DE\u05D0\u05DC \u202E gnp.\u0007").Rectangle(110, 30, 50, 90, rgb: 0x3060a0));
        Move(small);
        var damaged = SharedFiles.Damaged.First(path => Path.GetFileName(path) == "layer-count.psd");

        using var report = new LayerReport(page, new ReportOptions
        {
            Title = "Lanterns, second delivery",
            Time = new DateTimeOffset(2026, 3, 2, 9, 30, 0, TimeSpan.Zero),
            Measures = new HashSet<ReportMeasure>(Enum.GetValues<ReportMeasure>()),
            Force = true,
        });
        Assert.Empty(report.Add(LayerFiles.Read(folder["keeper.psd"]), cancellation: cancellation));
        Assert.Empty(report.Add(small, cancellation: cancellation));
        report.AddFailure(damaged, Assert.Throws<LayerTools.Errors.LayeredFileException>(() => LayerFiles.Read(damaged)));
        report.Complete(cancellation);
    }

    /// <summary>Puts the first layer into a group, so that there is a tree to narrow.</summary>
    private static void Move(LayerFile file)
    {
        var layer = file.GetLayers().First();
        var group = new Layer(LayerKind.Group, "Trial", file.Detail.CreateLayerDetail(LayerKind.Group)) { BlendMode = BlendMode.PassThrough };
        layer.Detach();
        group.Append(layer);
        file.Root.Insert(0, group);
        file.Renumber();
    }

    private static async Task<JsonElement> Run(string node, string[] arguments)
    {
        var start = new ProcessStartInfo(node) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var text = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, await errors);
        return JsonDocument.Parse(text).RootElement;
    }

    private static string[] Strings(JsonElement seen, string name) => [.. seen.GetProperty(name).EnumerateArray().Select(item => item.GetString()!)];

    private static string? FindCommand(params string[] names)
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator);
        return names.SelectMany(name => folders.Select(folder => Path.Combine(folder, name))).FirstOrDefault(File.Exists);
    }
}
