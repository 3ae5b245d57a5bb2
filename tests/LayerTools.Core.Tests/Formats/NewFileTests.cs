using ImageMagick;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats;

public sealed class NewFileTests
{
    [Theory]
    [InlineData("hero.psd", 120, 160)]
    [InlineData("hero.psb", 41, 30)]
    public void A_blank_file_is_what_was_asked_for(string name, int width, int height)
    {
        using var folder = new TemporaryFolder();
        LayerFiles.Save(LayerFiles.Create(folder[name], new NewFileOptions { Width = width, Height = height, Ppi = 350, Skeleton = true }), folder[name], new SaveOptions());

        var file = LayerFiles.Read(folder[name]);
        Assert.Equal((width, height, 350.0, ColorMode.Rgb, 8), (file.Width, file.Height, file.Ppi, file.ColorMode, file.BitDepth));
        Assert.Equal([new Guide(width / 2.0, true)], file.Guides);
        Assert.Equal("Hair Front", file.GetChildren()[0].Name);
        Assert.Equal("Backdrop", file.GetChildren()[^1].Name);
        Assert.Equal("Arm L/Hand L", file.GetLayers().Single(layer => layer.Name == "Hand L").LayerPath);
        var ids = file.GetLayers().Select(layer => layer.Id).ToList();
        Assert.Equal(ids.Count, ids.OfType<int>().Distinct().Count());
        Assert.Empty(file.Warnings);
    }

    /// <summary>An independent reader, Magick.NET, sees size, resolution and mid grey: CIE L* = 50 is sRGB 119 (CIE 15, IEC 61966-2-1).</summary>
    [Fact]
    public void An_independent_reader_sees_mid_grey()
    {
        using var folder = new TemporaryFolder();
        LayerFiles.Save(LayerFiles.Create(folder["a.psd"], new NewFileOptions { Width = 64, Height = 48 }), folder["a.psd"], new SaveOptions());
        using var frames = new MagickImageCollection(folder["a.psd"]);
        Assert.Equal(2, frames.Count);
        foreach (var frame in frames)
        {
            Assert.Equal((64u, 48u), (frame.Width, frame.Height));
            using var pixels = frame.GetPixels();
            Assert.Equal([119, 119, 119], pixels.GetPixel(10, 10).ToArray().Take(3).Select(value => (int)value));
        }

        Assert.Equal(600, frames[0].Density.X);
    }

    [Theory]
    [InlineData(0, 10, 72)]
    [InlineData(30_001, 10, 72)]
    [InlineData(10, -1, 72)]
    [InlineData(10, 10, 0)]
    [InlineData(10, 10, double.NaN)]
    public void Sizes_outside_the_format_are_refused(int width, int height, double ppi) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LayerFiles.Create("a.psd", new NewFileOptions { Width = width, Height = height, Ppi = ppi }));
}
