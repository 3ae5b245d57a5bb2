using ImageMagick;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Sheets.Symmetry;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Symmetry;

/// <summary>Pictures are read back with Magick.NET, a reader of other make.</summary>
public sealed class SymmetrySheetTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}");

    private string MapPath => Path.Combine(folder, "map.png");

    public void Dispose()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void A_small_figure_is_shown_enlarged()
    {
        // Canvas of 100 x 60 px, shown five times as large; the part lies left of the axis.
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm L", Bounds.FromSize(10, 10, 20, 20)));
        Assert.Equal([MapPath], SymmetrySheet.Write(file, MapPath, cancellation: TestContext.Current.CancellationToken).Paths);
        using var image = new MagickImage(MapPath);
        using var pixels = image.GetPixels();
        Assert.True(image.Width > 500 + 360 && image.Height > 300);
        foreach (var (x, y, cell) in new[] { (2, 2, SymmetryCell.Clear), (20, 20, SymmetryCell.Extra), (79, 20, SymmetryCell.Missing) })
        {
            // The figure begins below the header.
            var expected = SymmetryInk.Choose(cell, default, 5 * x, 5 * y);
            Assert.Equal([expected.R, expected.G, expected.B], pixels.GetValue(48 + (5 * x), 126 + (5 * y))!.Take(3));
        }
    }

    [Fact]
    public void A_file_that_exists_is_left_alone_unless_told_otherwise()
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(MapPath, "mine");
        var file = ModelBuilder.File(ModelBuilder.Pixel("Body"));
        Assert.Throws<SheetException>(() => SymmetrySheet.Write(file, MapPath, cancellation: TestContext.Current.CancellationToken));
        Assert.Equal("mine", File.ReadAllText(MapPath));
        SymmetrySheet.Write(file, MapPath, overwrite: true, TestContext.Current.CancellationToken);
        Assert.NotEqual("mine", File.ReadAllText(MapPath));
        Assert.Single(Directory.GetFiles(folder));
    }

    [Fact]
    public void Nothing_stays_of_a_picture_that_was_stopped()
    {
        using var stopping = new CancellationTokenSource();
        stopping.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => SymmetrySheet.Write(ModelBuilder.File(ModelBuilder.Pixel("Body")), MapPath, cancellation: stopping.Token));
        Assert.False(Directory.Exists(folder));
    }

    [Fact]
    public void A_figure_of_nothing_is_drawn_all_the_same()
    {
        SymmetrySheet.Write(ModelBuilder.File(ModelBuilder.Pixel("Sketch")), MapPath, cancellation: TestContext.Current.CancellationToken);
        Assert.True(File.Exists(MapPath));
    }

    [Fact]
    public void Other_endings_are_refused()
    {
        var error = Assert.Throws<SheetException>(() => SymmetrySheet.Write(ModelBuilder.File(ModelBuilder.Pixel("Body")), Path.Combine(folder, "map.jpg"), cancellation: TestContext.Current.CancellationToken));
        Assert.Equal(LayeredFileErrorKind.NotSupported, error.Kind);
    }
}
