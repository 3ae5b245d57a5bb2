using LayerTools.Errors;
using LayerTools.Images;
using LayerTools.Measures.Cover;
using LayerTools.Model;
using LayerTools.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Xunit;

namespace LayerTools.Tests.Images;

public class SeamPicturesTests
{
    private static readonly Rgba32 Neighbour = new(233, 205, 160);
    private static readonly Rgba32 Underneath = new(44, 74, 134);
    private static readonly Rgba32 Visible = new(118, 168, 226);
    private static readonly Rgba32 Open = new(206, 24, 40);

    [Fact]
    public void Show_each_seam_that_would_open_around_its_place()
    {
        using var folder = new TemporaryFolder();
        var cover = Measure(overlap: 2);
        var seam = Assert.Single(cover.Seams, seam => seam.ShallowLength > 0);
        var path = Assert.Single(SeamPictures.Write(cover, folder.Root, overwrite: false, TestContext.Current.CancellationToken));
        Assert.Equal("2 under 1 - Leg L - Skirt.png", Path.GetFileName(path));
        using var picture = Image.Load<Rgba32>(path);
        Assert.Equal((640, 640), (picture.Width, picture.Height));
        Assert.Equal(Open, At(picture, seam, seam.X!.Value, seam.Y!.Value));
        Assert.Equal(Underneath, At(picture, seam, 140, 98));
        Assert.Equal(Neighbour, At(picture, seam, 140, 97));
        Assert.Equal(Visible, At(picture, seam, 140, 104));
        Assert.Equal(new Rgba32(250, 250, 250), At(picture, seam, 210, 104));
    }

    [Fact]
    public void Nothing_is_written_where_no_seam_would_open()
    {
        using var folder = new TemporaryFolder();
        Assert.Empty(SeamPictures.Write(Measure(overlap: 9), folder.Root, overwrite: false, TestContext.Current.CancellationToken));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }

    [Fact]
    public void Pictures_that_exist_are_kept_unless_they_may_be_overwritten()
    {
        using var folder = new TemporaryFolder();
        var path = Assert.Single(SeamPictures.Write(Measure(overlap: 2), folder.Root, overwrite: false, TestContext.Current.CancellationToken));
        File.WriteAllText(path, "mine");
        Assert.Throws<LayeredFileException>(() => SeamPictures.Write(Measure(overlap: 2), folder.Root, overwrite: false, TestContext.Current.CancellationToken));
        Assert.Equal("mine", File.ReadAllText(path));
        SeamPictures.Write(Measure(overlap: 2), folder.Root, overwrite: true, TestContext.Current.CancellationToken);
        Assert.True(new FileInfo(path).Length > 100);
    }

    private static Rgba32 At(Image<Rgba32> picture, SeamCover seam, int x, int y) => picture[2 * (x - seam.X!.Value + 160), 2 * (y - seam.Y!.Value + 160)];

    private static FigureCover Measure(int overlap)
    {
        var file = ModelBuilder.File("hero.psd", 300, 200,
            ModelBuilder.Pixel("Skirt", new Bounds(20, 20, 280, 100)),
            ModelBuilder.Pixel("Leg L", new Bounds(100, 100 - overlap, 200, 180)));
        return FigureCover.Measure(file, file.GetLayers(), new CoverOptions { WantedDepth = 8 }, TestContext.Current.CancellationToken);
    }
}
