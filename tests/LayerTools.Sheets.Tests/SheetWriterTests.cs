using System.Globalization;
using ImageMagick;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests;

/// <summary>Sheets are read back with Magick.NET, a reader of other make.</summary>
public sealed class SheetWriterTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}");

    private string SheetPath => Path.Combine(folder, "sheet.png");

    public void Dispose()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void A_small_part_stands_pixel_for_pixel_on_mid_grey()
    {
        var part = ModelBuilder.Pixel("Iris L", Bounds.FromSize(5, 5, 40, 30));
        var result = Write(ModelBuilder.File(part));
        Assert.Equal([SheetPath], result.Paths);
        Assert.Empty(result.Warnings);
        using var image = new MagickImage(SheetPath);
        using var pixels = image.GetPixels();
        // The tile starts at the margins; the part stands in its middle.
        var (left, top) = (48, 48 + SheetStyle.Screen.HeaderHeight);
        Assert.Equal([0x77, 0x77, 0x77], Rgb(pixels, left, top));
        Assert.Equal([0x77, 0x77, 0x77], Rgb(pixels, left + 319, top + 319));
        Assert.NotEqual([0x77, 0x77, 0x77], Rgb(pixels, left + 320, top));
        for (var y = 0; y < 30; y++)
        {
            for (var x = 0; x < 40; x++)
            {
                var i = 40 * y + x;
                Assert.Equal([(byte)(i * 7), (byte)(i * 7 + 50), (byte)(i * 7 + 100)], Rgb(pixels, left + 140 + x, top + 145 + y));
            }
        }
    }

    [Fact]
    public void Many_parts_take_several_pages_that_hold_every_limit()
    {
        var result = Write(ModelBuilder.File([.. Enumerable.Range(1, 110).Select(i => ModelBuilder.Pixel($"Layer {i}"))]));
        Assert.Equal(110, result.PartCount);
        Assert.Equal(["sheet.png", "sheet-2.png", "sheet-3.png"], result.Paths.Select(Path.GetFileName));
        Assert.Equal(3, Directory.GetFiles(folder).Length);
        foreach (var path in result.Paths)
        {
            using var image = new MagickImage(path);
            Assert.True((long)image.Width * image.Height <= 16_000_000);
            Assert.Equal(MagickFormat.Png, image.Format);
        }
    }

    [Fact]
    public void Nothing_is_overwritten_without_force()
    {
        var file = ModelBuilder.File([.. Enumerable.Range(1, 110).Select(i => ModelBuilder.Pixel($"Layer {i}"))]);
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "sheet-2.png"), "mine");
        var error = Assert.Throws<SheetException>(() => Write(file));
        Assert.Contains("-Force", error.Remedy, StringComparison.Ordinal);
        Assert.Equal(["sheet-2.png"], Directory.GetFiles(folder).Select(Path.GetFileName));
        Write(file, new SheetOptions { Force = true });
        Assert.Equal(3, Directory.GetFiles(folder).Length);
        Assert.NotEqual("mine", File.ReadAllText(Path.Combine(folder, "sheet-2.png")));
    }

    [Fact]
    public void A_page_of_an_earlier_sheet_is_told()
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "sheet-2.png"), "mine");
        Assert.Contains("sheet-2.png", Assert.Single(Write(ModelBuilder.File(ModelBuilder.Pixel("Nose"))).Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_cannot_be_read_is_a_cell_and_a_warning()
    {
        var broken = ModelBuilder.Pixel("Nose");
        broken.Planes[1] = ModelBuilder.Raw(PlaneRole.Color0, [1]);
        var result = Write(ModelBuilder.File(broken, ModelBuilder.Pixel("Mouth")));
        Assert.Equal(2, result.PartCount);
        Assert.StartsWith("'Nose' cannot be read: ", Assert.Single(result.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_without_parts_is_still_a_page()
    {
        var result = Write(ModelBuilder.File(ModelBuilder.Group("Head")));
        Assert.Equal(0, result.PartCount);
        Assert.Single(result.Paths);
    }

    [Fact]
    public void Stopped_leaves_nothing()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Nose"));
        Assert.ThrowsAny<OperationCanceledException>(() => SheetWriter.Write(file, [.. file.GetLayers()], SheetPath, new SheetOptions(), new CancellationToken(canceled: true)));
        Assert.False(Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any());
    }

    [Theory]
    [InlineData(63, null)]
    [InlineData(2049, null)]
    [InlineData(320, 0)]
    public void Values_out_of_range_are_refused(int cellSize, int? columns) =>
        Assert.Throws<SheetException>(() => Write(ModelBuilder.File(ModelBuilder.Pixel("Nose")), new SheetOptions { CellSize = cellSize, Columns = columns }));

    [Fact]
    public void Other_kinds_of_pictures_are_refused()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Nose"));
        var error = Assert.Throws<SheetException>(() => SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, "sheet.bmp"), new SheetOptions(), TestContext.Current.CancellationToken));
        Assert.Contains(".png", error.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_file_can_be_made_the_error_is_told_and_nothing_stays()
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "blocked"), "a file where a folder should be");
        var file = ModelBuilder.File(ModelBuilder.Pixel("Nose"));
        var error = Assert.Throws<LayeredFileException>(() => SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, "blocked", "sheet.png"), new SheetOptions(), TestContext.Current.CancellationToken));
        Assert.Equal(LayeredFileErrorKind.Unavailable, error.Kind);
        Assert.Single(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void Layers_of_another_file_are_refused()
    {
        var other = ModelBuilder.File(ModelBuilder.Pixel("Nose"));
        Assert.Throws<ArgumentException>(() => SheetWriter.Write(ModelBuilder.File(), [.. other.GetLayers()], SheetPath, new SheetOptions(), TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("ja-JP")]
    public void The_culture_changes_no_pixel(string culture)
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("IRIS L", Bounds.FromSize(0, 0, 3000, 20), mark: Mark.Violet));
        Write(file);
        var expected = File.ReadAllBytes(SheetPath);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Write(file, new SheetOptions { Force = true });
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal(expected, File.ReadAllBytes(SheetPath));
    }

    private SheetResult Write(LayerFile file, SheetOptions? options = null) => SheetWriter.Write(file, [.. file.GetLayers()], SheetPath, options ?? new SheetOptions(), TestContext.Current.CancellationToken);

    private static byte[] Rgb(IPixelCollection<byte> pixels, int x, int y) => [.. pixels.GetValue(x, y)!.Take(3)];
}
