using ImageMagick;
using LayerTools.Deliveries;
using LayerTools.Model;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Deliveries;

/// <summary>Pictures are read back with Magick.NET, a reader of other make.</summary>
public sealed class DifferencePicturesTests : IDisposable
{
    private const int Left = 48;

    /// <summary>Where the three pictures begin: below title, two lines and labels.</summary>
    private const int Top = 48 + 38 + 24 + 24 + 14 + 26;

    private readonly string folder = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}");

    public void Dispose()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Shows_before_after_and_difference_side_by_side()
    {
        // 60 x 60 px, shown four times as large; 20 x 20 px in the middle become blue.
        var (old, @new) = (Square(), Square(blue: true));
        var path = Assert.Single(Write(old, @new));
        Assert.Equal(Path.Combine(folder, "Chest.png"), path);
        using var image = new MagickImage(path);
        using var pixels = image.GetPixels();
        byte[] At(int panel, int x, int y) => [.. pixels.GetValue(Left + (panel * (240 + 28)) + (4 * x), Top + (4 * y))!.Take(3)];
        Assert.Equal((2u * Left) + (3 * 240) + (2 * 28), image.Width);
        Assert.Equal<byte>([0x80, 0x60, 0x40], At(0, 30, 30));
        Assert.Equal<byte>([0x00, 0x00, 0xFF], At(1, 30, 30));
        Assert.Equal<byte>([0x80, 0x60, 0x40], At(1, 10, 10));

        // What differs is dark, what is the same light, and what is not painted mid grey.
        Assert.All(At(2, 30, 30), level => Assert.InRange(level, 0, 96));
        Assert.All(At(2, 10, 10), level => Assert.Equal(206, level));
        Assert.All(At(2, 2, 2), level => Assert.Equal(0x77, level));
    }

    [Fact]
    public void A_single_changed_pixel_of_a_large_part_is_seen()
    {
        var (old, @new) = (Large(), Large(painting => painting.Rectangle(1500, 1500, 1, 1, rgb: 0x816040)));
        using var image = new MagickImage(Assert.Single(Write(old, @new)));
        using var pixels = image.GetPixels();
        var dark = Enumerable.Range(0, 480 * 480).Count(i => pixels.GetValue(Left + (2 * (480 + 28)) + (i % 480), Top + (i / 480))![0] is > 80 and <= 96);
        Assert.Equal(1, dark);
    }

    [Fact]
    public void What_was_not_repainted_has_no_picture()
    {
        var moved = Square();
        moved.GetLayers().Single().Bounds = moved.GetLayers().Single().Bounds.Shift(3, 0);
        Assert.Empty(Write(Square(), moved));
        Assert.False(Directory.Exists(folder));
    }

    [Fact]
    public void A_picture_that_exists_is_left_alone_unless_told_otherwise()
    {
        Directory.CreateDirectory(folder);
        var path = Path.Combine(folder, "Chest.png");
        File.WriteAllText(path, "mine");
        Assert.Throws<SheetException>(() => Write(Square(), Square(blue: true)));
        Assert.Equal("mine", File.ReadAllText(path));
        Assert.Equal([path], Write(Square(), Square(blue: true), overwrite: true));
        Assert.NotEqual("mine", File.ReadAllText(path));
        Assert.Single(Directory.GetFiles(folder));
    }

    [Fact]
    public void Names_are_made_safe()
    {
        var (old, @new) = (Square(), Square(blue: true));
        foreach (var file in new[] { old, @new }) file.GetLayers().Single().Name = "../Arm: L";
        var path = Assert.Single(Write(old, @new));
        Assert.Equal(folder, Path.GetDirectoryName(path));
    }

    private IReadOnlyList<string> Write(LayerFile old, LayerFile @new, bool overwrite = false)
    {
        var differences = DeliveryComparer.Compare(old, @new, TestContext.Current.CancellationToken).Differences;
        return DifferencePictures.Write(old, @new, differences, folder, overwrite, TestContext.Current.CancellationToken);
    }

    private static LayerFile Square(bool blue = false)
    {
        var painting = Painting.Of("Chest").Rectangle(0, 0, 60, 60).Rectangle(0, 0, 5, 5, alpha: 0);
        return ModelBuilder.File((blue ? painting.Rectangle(20, 20, 20, 20, rgb: 0x0000FF) : painting).ToLayer());
    }

    private static LayerFile Large(Func<Painting, Painting>? change = null) =>
        ModelBuilder.File((change ?? (painting => painting))(Painting.Of("Back").Rectangle(0, 0, 2000, 2000)).ToLayer());
}
