using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;
using SixLabors.ImageSharp.Processing.Processors.Transforms;
using Xunit;

namespace LayerTools.Tests.Pixels.Resampling;

/// <summary>Resampled parts against whole pictures resampled by another library, ImageSharp, and by a plain mean.</summary>
public class ResampledPicturesTests
{
    // ImageSharp widens a filter for smaller pictures as Catmull-Rom is widened here, and Box at whole ratios is the area average.
    public static TheoryData<ResampleFilter, int, int, int, int> Sizes() => new()
    {
        { ResampleFilter.CatmullRom, 120, 80, 60, 40 },
        { ResampleFilter.CatmullRom, 120, 80, 90, 60 },
        { ResampleFilter.CatmullRom, 120, 80, 240, 160 },
        { ResampleFilter.CatmullRom, 100, 70, 38, 26 },
        { ResampleFilter.Area, 120, 80, 60, 40 },
        { ResampleFilter.Area, 120, 80, 30, 20 },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void An_opaque_picture_is_resampled_as_another_library_does(ResampleFilter filter, int width, int height, int newWidth, int newHeight)
    {
        var file = Opaque(width, height);
        var expected = ResizeElsewhere(Render(file), filter == ResampleFilter.Area ? KnownResamplers.Box : KnownResamplers.CatmullRom, newWidth, newHeight);

        new ResizeEdit { Width = newWidth, Filter = filter }.Plan(file, []).Apply();

        Assert.Equal((newWidth, newHeight), (file.Width, file.Height));
        Assert.InRange(FarthestApart(expected, Render(file)), 0, 1);
    }

    // A part's soft edge over one colour mixes the same whether the picture is resampled or the part.
    [Theory]
    [InlineData(ResampleFilter.Area, 50)]
    [InlineData(ResampleFilter.Area, 37)]
    [InlineData(ResampleFilter.CatmullRom, 50)]
    [InlineData(ResampleFilter.CatmullRom, 62.5)]
    [InlineData(ResampleFilter.CatmullRom, 150)]
    public void Parts_land_where_the_whole_picture_has_them(ResampleFilter filter, double percent)
    {
        Painting[] parts = [Painting.Of("Ear").Ellipse(11, 7, 33, 41, 255, 0xC04020).Ellipse(20, 12, 9, 9, 120, 0x2040FF), Painting.Of("Hand").Rectangle(61, 23, 30, 17, 200, 0x20A040), Painting.Of("Foot").Ellipse(95, 50, 31, 37, 255, 0x101010)];
        var file = ModelBuilder.File("figure.psd", 120, 80, [.. parts.Select(part => part.ToLayer()), Painting.Of("Back").Rectangle(0, 0, 120, 80, 255, 0xD0D0D0).ToLayer()]);
        var whole = ModelBuilder.File("picture.psd", 120, 80, FromRaster(Render(file)));

        foreach (var each in new[] { file, whole }) new ResizeEdit { Percent = percent, Filter = filter }.Plan(each, []).Apply();

        var (expected, drawn) = (Render(whole), Render(file));
        if (filter == ResampleFilter.Area) Assert.InRange(FarthestApart(expected.Pixels, drawn), 0, 2);
        // A cubic goes beyond opaque at hard edges, where a part is cut off and the whole picture is not; half a pixel beside its place the mean would be above 4.
        else Assert.InRange(expected.Pixels.Zip(drawn.Pixels, (a, b) => Math.Abs(a - b)).Average(), 0, 1.5);
    }

    [Fact]
    public void Half_the_size_is_the_mean_of_four_premultiplied_pixels()
    {
        var file = ModelBuilder.File("four.psd", 4, 4, Painting.Of("A").Rectangle(1, 1, 1, 1, 255, 0xFF0000).Rectangle(2, 1, 1, 1, 51, 0x00FF00).Within(new Bounds(1, 1, 3, 2)).ToLayer());

        new ResizeEdit { Percent = 50 }.Plan(file, []).Apply();

        var layer = file.GetLayers().Single();
        Assert.Equal(new Bounds(0, 0, 2, 1), layer.Bounds);
        using var reader = new PixelReader(file);
        Assert.Equal([64, 13], reader.ReadPlane(layer, PlaneRole.Alpha));
        Assert.Equal([255, 0], reader.ReadPlane(layer, PlaneRole.Color0));
        Assert.Equal([0, 255], reader.ReadPlane(layer, PlaneRole.Color1));
    }

    [Fact]
    public void Nothing_rings_beyond_the_old_colours_and_opacity()
    {
        var file = ModelBuilder.File("line.psd", 64, 64, Painting.Of("Line").Rectangle(10, 0, 3, 64, 255, 0x404040).Rectangle(30, 0, 20, 64, 255, 0xC0C0C0).ToLayer());

        new ResizeEdit { Width = 96, Filter = ResampleFilter.CatmullRom }.Plan(file, []).Apply();

        var layer = file.GetLayers().Single();
        using var reader = new PixelReader(file);
        var (alpha, red) = (reader.ReadPlane(layer, PlaneRole.Alpha)!, reader.ReadPlane(layer, PlaneRole.Color0)!);
        Assert.Contains((byte)255, alpha);
        Assert.All(red.Where((_, i) => alpha[i] > 0), value => Assert.InRange(value, 0x40, 0xC0));
    }

    private static LayerFile Opaque(int width, int height)
    {
        var random = new Random(7);
        var layer = ModelBuilder.Pixel("Picture", new Bounds(0, 0, width, height));
        for (var i = 1; i < layer.Planes.Count; i++)
        {
            // Waves with some noise, so that edges and flat places are both there.
            var (samples, channel) = (new byte[width * height], i);
            for (var k = 0; k < samples.Length; k++) samples[k] = (byte)(128 + (100 * Math.Sin(((k % width * channel) + (k / width * 2)) / 9.0)) + random.Next(20));
            layer.Planes[i] = ModelBuilder.Raw(layer.Planes[i].Role, samples);
        }

        return ModelBuilder.File("opaque.psd", width, height, layer);
    }

    private static Raster Render(LayerFile file)
    {
        using var reader = new PixelReader(file);
        return new Compositor(file, reader).RenderWhole();
    }

    private static Layer FromRaster(Raster raster)
    {
        var layer = ModelBuilder.Pixel("Picture", new Bounds(0, 0, raster.Width, raster.Height));
        for (var i = 1; i < 4; i++) layer.Planes[i] = ModelBuilder.Raw((PlaneRole)(i - 1), [.. Enumerable.Range(0, raster.Width * raster.Height).Select(k => raster.Pixels[(4 * k) + i - 1])]);
        return layer;
    }

    private static byte[] ResizeElsewhere(Raster raster, IResampler resampler, int width, int height)
    {
        using var image = Image.LoadPixelData<Rgba32>(raster.Pixels, raster.Width, raster.Height);
        image.Mutate(context => context.Resize(width, height, resampler));
        var pixels = new byte[4 * width * height];
        image.CopyPixelDataTo(pixels);
        return pixels;
    }

    private static int FarthestApart(Raster one, Raster other) => FarthestApart(one.Pixels, other);

    private static int FarthestApart(byte[] one, Raster other) => one.Zip(other.Pixels.ToArray(), (a, b) => Math.Abs(a - b)).Max();
}
