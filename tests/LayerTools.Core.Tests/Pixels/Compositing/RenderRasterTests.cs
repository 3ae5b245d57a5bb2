using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing;

public class RenderRasterTests
{
    [Theory]
    [InlineData(5000, 6000, 160, 160, 133, 160)]
    [InlineData(600, 10, 160, 160, 160, 3)]
    [InlineData(1000, 1, 160, 160, 160, 1)]
    [InlineData(30, 20, 160, 160, 30, 20)]
    public void The_picture_keeps_its_proportions_and_is_never_enlarged(int width, int height, int maxWidth, int maxHeight, int expectedWidth, int expectedHeight)
    {
        var raster = Shrink(Grey(width, height), maxWidth, maxHeight);

        Assert.Equal((expectedWidth, expectedHeight), (raster.Width, raster.Height));
    }

    [Fact]
    public void Transparent_pixels_lend_no_colour()
    {
        var raster = Shrink(Grey(2, 2, Even("Dot", new Bounds(0, 0, 1, 1), 200)), 1, 1);

        Assert.Equal([200, 200, 200, 64], raster.Pixels);
    }

    [Fact]
    public void At_full_size_pixels_are_as_stored()
    {
        var raster = Shrink(Grey(2, 1, Even("Dot", new Bounds(1, 0, 2, 1), 70, 102)), 10, 10);

        Assert.Equal([0, 0, 0, 0, 70, 70, 70, 102], raster.Pixels);
    }

    /// <summary>Half of full light is sRGB 188 (IEC 61966-2-1).</summary>
    [Fact]
    public void Linear_floats_are_encoded_to_be_looked_at()
    {
        var layer = new Layer(LayerKind.Pixel, "Glow", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 1, 1) };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, [0x3F, 0, 0, 0]));

        Assert.Equal([188, 188, 188, 255], Shrink(Create(ColorMode.Grayscale, 32, 1, 1, layer), 10, 10).Pixels);
    }

    [Fact]
    public void A_subject_without_pixels_gives_an_empty_picture()
    {
        var group = ModelBuilder.Group("Empty");
        var file = Grey(4, 4, group);
        using var reader = new PixelReader(file);

        Assert.Equal(0, new Compositor(file, reader, new CompositeOptions { Subject = group }).RenderRaster(10, 10).Width);
    }

    private static Raster Shrink(LayerFile file, int maxWidth, int maxHeight)
    {
        using var reader = new PixelReader(file);
        return new Compositor(file, reader).RenderRaster(maxWidth, maxHeight);
    }
}
