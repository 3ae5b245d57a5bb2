using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Text;

public sealed class TextShaperTests : IDisposable
{
    private static readonly TextStyle Style = new(20, 28);
    private readonly FontLibrary shippedOnly = new(() => []);
    private readonly TextShaper shaper;

    public TextShaperTests() => shaper = new TextShaper(shippedOnly);

    public void Dispose()
    {
        shaper.Dispose();
        shippedOnly.Dispose();
    }

    [Fact]
    public void Letters_are_shaped_and_not_only_lined_up()
    {
        // Kerning: the pair is closer than its letters alone.
        Assert.True(shaper.Measure("AV", Style) < shaper.Measure("A", Style) + shaper.Measure("V", Style));
        // A letter and its accent are one glyph wide.
        Assert.Equal(shaper.Measure("e", Style), shaper.Measure("e\u0301", Style), 3);
    }

    [Fact]
    public void The_heavy_cut_is_a_font_of_its_own() => Assert.True(shaper.Measure("Eyelash", Style with { IsBold = true }) > shaper.Measure("Eyelash", Style));

    [Theory]
    [InlineData("Ünïcode ß Ελλάδα Тень Việt")]
    [InlineData("5000 \u00D7 6000 px \u00B7 at 12 % \u2026 \uFFFD")]
    public void The_shipped_font_has_the_letters_of_many_languages_and_of_our_own_words(string text) =>
        Assert.All(shaper.Shape(text, Style).Runs, run => Assert.DoesNotContain((ushort)0, run.Glyphs));

    [Fact]
    public void Characters_that_no_font_has_still_take_their_place()
    {
        var line = shaper.Shape("前髪 L", Style);
        Assert.Contains((ushort)0, line.Runs.SelectMany(run => run.Glyphs));
        Assert.True(line.Width > shaper.Measure(" L", Style));
    }

    [Fact]
    public void Right_to_left_text_comes_in_drawing_order()
    {
        var line = shaper.Shape("a \u05D0\u05D1", Style);
        Assert.Equal(2, line.Runs.Count);
        Assert.True(line.Runs[1].Positions[0].X >= line.Runs[0].Positions.Max(point => point.X));
        Assert.Equal(0, shaper.Measure(string.Empty, Style));
    }

    [Fact]
    public void Broken_font_files_are_passed_over()
    {
        var path = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}.ttf");
        File.WriteAllText(path, "no font");
        try
        {
            using var fonts = new FontLibrary(() => [path, path + ".missing"]);
            using var other = new TextShaper(fonts);
            Assert.True(other.Measure("前髪", Style) > 0);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData("前髪")]
    [InlineData("ノート")]
    [InlineData("\U0001F98A")]
    [InlineData("\u062D\u0627\u062C\u0628")]
    public void The_fonts_of_the_machine_fill_in(string text)
    {
        using var fonts = new FontLibrary(FontFolders.ListFiles);
        using var withMachine = new TextShaper(fonts);
        var glyphs = withMachine.Shape(text, Style).Runs.SelectMany(run => run.Glyphs).ToList();
        Assert.SkipWhen(glyphs.TrueForAll(glyph => glyph == 0), "No font of this machine has these characters.");
        Assert.DoesNotContain((ushort)0, glyphs);
    }
}
