using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing;

public class RgbaPackerTests
{
    public static TheoryData<string> Names() => ["rgb-8", "rgb-16", "rgb-32", "grey-8", "grey-16", "cmyk-8", "lab-8"];

    /// <summary>The small picture of the same size goes another way to its bytes.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void The_whole_picture_is_the_small_one_made_no_smaller(string name)
    {
        var file = LayerFiles.Read(Find(name));
        using var reader = new PixelReader(file);
        var compositor = new Compositor(file, reader);
        var whole = compositor.RenderWhole();
        var small = compositor.RenderRaster(file.Width, file.Height);

        Assert.Equal((small.Width, small.Height), (whole.Width, whole.Height));
        for (var i = 0; i < whole.Pixels.Length; i++)
        {
            // What is not seen has no colour.
            if (whole.Pixels[i | 3] != 0) Assert.InRange(Math.Abs(whole.Pixels[i] - small.Pixels[i]), 0, 1);
            else Assert.Equal(0, whole.Pixels[i]);
        }
    }

    [Fact]
    public void Nothing_is_drawn_of_an_empty_area()
    {
        var file = ModelBuilder.File();
        using var reader = new PixelReader(file);

        Assert.Empty(new Compositor(file, reader, new CompositeOptions { Area = Bounds.Empty }).RenderWhole().Pixels);
    }

    private static string Find(string name) => SharedFiles.Fixtures.First(path => Path.GetFileName(path) == name + ".psd");
}
