using ImageMagick;
using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Text;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests;

/// <summary>What files and machines may be like at their worst.</summary>
public sealed class SheetBadInputTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}");

    public static TheoryData<string> Formats => ["sheet.png", "sheet.pdf", "sheet.html"];

    public void Dispose()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Without_fonts_on_the_machine_a_sheet_is_written_and_says_what_to_install(string name)
    {
        var options = new SheetOptions { ListFonts = () => [] };
        var result = Write(ModelBuilder.File(ModelBuilder.Pixel("\u5E3D\u5B50"), ModelBuilder.Pixel("Nose")), name, options);
        // A browser has fonts of its own.
        if (name.EndsWith(".html", StringComparison.Ordinal)) Assert.Empty(result.Warnings);
        else Assert.Contains("'\u5E3D' (U+5E3D)", Assert.Single(result.Warnings), StringComparison.Ordinal);
        Assert.Empty(Write(ModelBuilder.File(ModelBuilder.Pixel("Nose \u00E9\u0416\u03A9")), "latin.png", options).Warnings);
    }

    [Fact]
    public void A_font_file_that_is_none_is_passed_over()
    {
        Directory.CreateDirectory(folder);
        var broken = Path.Combine(folder, "broken.ttf");
        File.WriteAllText(broken, "no font");
        using var fonts = new FontLibrary(() => [broken, Path.Combine(folder, "gone.otf")]);
        using var shaper = new TextShaper(fonts);
        Assert.True(shaper.Measure("\u5E3D", new TextStyle(13, 19)) > 0);
        Assert.NotNull(fonts.FindMissing());
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Names_of_255_wide_characters_fit(string name)
    {
        string[] names = [new('W', 255), new('\u9F98', 255), string.Concat(Enumerable.Repeat("\uFDFD", 255)), string.Concat(Enumerable.Repeat("\U0001F469\u200D\U0001F469\u200D\U0001F466", 31))];
        var result = Write(ModelBuilder.File([.. names.Select(name => ModelBuilder.Pixel(name))]), name, new SheetOptions { CellSize = 64 });
        Assert.Equal(4, result.PartCount);
    }

    [Theory]
    [InlineData(1, 30_000, "1 \u00D7 288")]
    [InlineData(30_000, 1, "288 \u00D7 1")]
    public void A_part_as_thin_as_a_line_is_a_line(int width, int height, string expected)
    {
        var part = ModelBuilder.Pixel("Thread", Bounds.FromSize(-5, -5, width, height));
        var file = ModelBuilder.File(part);
        Assert.Equal(expected, Show(PartFit.Into(part.Bounds, 288)));
        foreach (var view in new[] { SheetView.Alone, SheetView.Both })
        {
            Write(file, "sheet.png", new SheetOptions { View = view, Force = true, Scale = SheetScale.Common });
            using var image = new MagickImage(Path.Combine(folder, "sheet.png"));
            Assert.InRange(image.Height, 400u, 800u);
        }

        static string Show(PartFit fit) => FormattableString.Invariant($"{fit.Width} \u00D7 {fit.Height}");
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void A_file_without_layers_is_a_page_that_says_so(string name)
    {
        foreach (var content in Enum.GetValues<SheetContent>().Where(content => content != SheetContent.File))
        {
            foreach (var view in Enum.GetValues<SheetView>())
            {
                var result = Write(ModelBuilder.File(), name, new SheetOptions { Content = content, View = view, Force = true });
                Assert.Equal((0, 1), (result.PartCount, result.PageCount));
            }
        }
    }

    [Fact]
    public void An_empty_group_is_a_cell_that_says_so()
    {
        var result = Write(ModelBuilder.File(ModelBuilder.Group("Head"), ModelBuilder.Group("Body", ModelBuilder.Pixel("Nose"))), "sheet.html", new SheetOptions { Content = SheetContent.Group });
        Assert.Equal(2, result.PartCount);
        Assert.Contains("<span>empty group</span>", File.ReadAllText(result.Paths[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_far_larger_than_any_canvas_is_a_cell_that_says_so()
    {
        var (left, right) = (ModelBuilder.Pixel("Left", Bounds.FromSize(-900_000, 0, 10, 10)), ModelBuilder.Pixel("Right", Bounds.FromSize(900_000, 0, 10, 10)));
        var result = Write(ModelBuilder.File(ModelBuilder.Group("Apart", left, right)), "sheet.png", new SheetOptions { Content = SheetContent.Group });
        Assert.StartsWith("'Apart' cannot be read: ", Assert.Single(result.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void Five_thousand_parts_are_pages_and_little_memory()
    {
        // All of their pictures at the size of their cells would take 330 MB.
        var pixels = new byte[160 * 160];
        pixels.AsSpan().Fill(200);
        var parts = Enumerable.Range(1, 5000).Select(i =>
        {
            var part = new Layer(LayerKind.Pixel, FormattableString.Invariant($"Layer {i}"), new StubLayerDetail()) { Bounds = Bounds.FromSize(0, 0, 160, 160) };
            part.Planes = [ModelBuilder.Raw(PlaneRole.Color0, pixels), ModelBuilder.Raw(PlaneRole.Color1, pixels), ModelBuilder.Raw(PlaneRole.Color2, pixels)];
            return part;
        }).ToArray();
        var file = ModelBuilder.File(parts);
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var most = 0L;
        var result = Write(file, "sheet.pdf", new SheetOptions { CellSize = 64, Progress = (done, _) => { if (done % 250 == 0) most = Math.Max(most, GC.GetTotalMemory(forceFullCollection: true) - before); } });
        Assert.Equal(5000, result.PartCount);
        Assert.True(result.PageCount > 100);
        Assert.InRange(most, 0, 60_000_000);
    }

    private SheetResult Write(LayerFile file, string name, SheetOptions options) =>
        SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, name), options, TestContext.Current.CancellationToken);
}
