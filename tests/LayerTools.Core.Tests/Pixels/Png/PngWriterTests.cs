using System.Buffers.Binary;
using ImageMagick;
using LayerTools.Pixels;
using LayerTools.Pixels.Png;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Xunit;

namespace LayerTools.Tests.Pixels.Png;

/// <summary>What is written, as ImageSharp and Magick.NET read it.</summary>
public class PngWriterTests
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
        // Noise, a slope and an even part, so that either filter has rows of its own.
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
    public void Resolution_and_profile_are_kept()
    {
        // Length; class, colours and what they lead to; the signature (ICC.1, 'Profile header'). It has no tags, and noise stands for their data.
        var profile = new byte[3000];
        new Random(1).NextBytes(profile.AsSpan(132));
        BinaryPrimitives.WriteInt32BigEndian(profile, profile.Length);
        "mntrRGB XYZ "u8.CopyTo(profile.AsSpan(12));
        "acsp"u8.CopyTo(profile.AsSpan(36));
        var png = Write(new Raster(2, 2), 600, profile);

        using var image = new MagickImage(png);

        Assert.Equal(600, image.Density.ChangeUnits(DensityUnit.PixelsPerInch).X, 1);
        Assert.Equal(profile, image.GetProfile("icc")!.ToByteArray());
    }

    [Fact]
    public void Rows_too_few_or_too_many_are_refused()
    {
        using var png = new PngWriter(new MemoryStream(), 1, 1);

        Assert.Throws<InvalidOperationException>(png.Complete);
        png.WriteRow(new byte[4]);
        Assert.Throws<InvalidOperationException>(() => png.WriteRow(new byte[4]));
    }

    private static byte[] Write(Raster raster, double? ppi = null, byte[]? profile = null)
    {
        var stream = new MemoryStream();
        using var png = new PngWriter(stream, raster.Width, raster.Height, ppi, profile);
        for (var y = 0; y < raster.Height; y++) png.WriteRow(raster.Row(y));
        png.Complete();
        return stream.ToArray();
    }
}
