using LayerTools.Model;
using LayerTools.Pixels;
using Xunit;

namespace LayerTools.Tests.Support;

public class PaintingTests
{
    [Fact]
    public void Later_shapes_replace_earlier_ones()
    {
        using var folder = new TemporaryFolder();
        var file = PaintedFile.Save(folder, "hero.psd", 40, 30, Painting.Of("Part").Rectangle(2, 3, 6, 4, rgb: 0x112233).Rectangle(3, 4, 2, 1, alpha: 0).Ellipse(20, 20, 2, 2, alpha: 9));

        var part = file.Find("Part");
        using var reader = new PixelReader(file);
        var raster = reader.ReadRaster(part);

        Assert.Equal(new Bounds(2, 3, 22, 22), part.Bounds);
        Assert.Equal([0x11, 0x22, 0x33, 255], raster.Row(0)[..4].ToArray());
        Assert.Equal(0, raster.Row(1)[(1 * 4) + 3]);
        Assert.Equal(255, raster.Row(1)[(3 * 4) + 3]);
        Assert.Equal(9, raster.Row(18)[(19 * 4) + 3]);
    }
}
