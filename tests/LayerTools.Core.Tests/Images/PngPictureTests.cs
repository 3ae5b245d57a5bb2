using ImageMagick;
using LayerTools.Images;
using LayerTools.Pixels;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Xunit;

namespace LayerTools.Tests.Images;

/// <summary>What is written, as ImageSharp and Magick.NET read it.</summary>
public class PngPictureTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(7, 5)]
    [InlineData(16, 3)]
    [InlineData(301, 257)]
    public void Pixels_come_back(int width, int height)
    {
        var raster = new Raster(width, height);
        var random = new Random(width);
        for (var y = 0; y < height; y++)
        {
            var row = raster.Row(y);
            for (var i = 0; i < row.Length; i++) row[i] = (byte)(y % 3 == 0 ? random.Next(256) : y % 3 == 1 ? i * 3 : 200);
        }

        using var image = Image.Load<Rgba32>(Write(raster));

        Assert.Equal((width, height), (image.Width, image.Height));
        var read = new byte[raster.Pixels.Length];
        image.CopyPixelDataTo(read);
        Assert.Equal(raster.Pixels, read);
    }

    [Fact]
    public void Resolution_is_kept()
    {
        using var image = new MagickImage(Write(new Raster(2, 2), 600));
        Assert.Equal(600, image.Density.ChangeUnits(DensityUnit.PixelsPerInch).X, 1);
    }

    private static byte[] Write(Raster raster, double? ppi = null)
    {
        var stream = new MemoryStream();
        using var png = new PngPicture(raster.Width, raster.Height, ppi);
        for (var y = 0; y < raster.Height; y++) png.WriteRow(raster.Row(y));
        png.Save(stream);
        return stream.ToArray();
    }
}
