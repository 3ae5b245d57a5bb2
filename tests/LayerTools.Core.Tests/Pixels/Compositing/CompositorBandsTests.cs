using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Pictures of many bands, of noise from a fixed seed.</summary>
public class CompositorBandsTests
{
    private const int Width = 301;
    private const int Height = 417;

    [Fact]
    public void The_picture_does_not_depend_on_the_number_of_threads()
    {
        var file = CreateNoise();

        var alone = Picture.Render(file, withAlpha: true, new CompositeOptions { Threads = 1 });

        Assert.Equal(alone, Picture.Render(file, withAlpha: true, new CompositeOptions { Threads = 2 }));
        Assert.Equal(alone, Picture.Render(file, withAlpha: true, new CompositeOptions { Threads = 7 }));
        Assert.Equal(Shrink(file, 1), Shrink(file, 5));
    }

    [Fact]
    public void Bands_come_in_order_without_gaps()
    {
        var file = CreateNoise();
        using var reader = new PixelReader(file);
        var next = 0;

        new Compositor(file, reader).Render(withAlpha: false, band =>
        {
            Assert.Equal(next, band.Top);
            Assert.Equal(Width, band.RowBytes);
            Assert.Equal(band.RowCount * band.RowBytes, band.GetRows(2).Length);
            next += band.RowCount;
        });

        Assert.Equal(Height, next);
    }

    [Fact]
    public void Both_pictures_from_one_drawing_are_as_from_two()
    {
        var file = CreateNoise();
        using var reader = new PixelReader(file);
        var red = new List<int>();

        var small = new Compositor(file, reader).RenderWithRaster(withAlpha: true, band => red.AddRange(band.GetRows(0).ToArray().Select(value => (int)value)), 64, 64);

        Assert.Equal(Picture.Render(file, withAlpha: true)[0], red);
        Assert.Equal(Shrink(file, 2), small.Pixels);
    }

    /// <summary>Every pixel once more, by the formulas of the standard in plain double arithmetic.</summary>
    [Fact]
    public void Long_rows_and_many_bands_agree_with_pixel_by_pixel_arithmetic()
    {
        var file = CreateNoise();
        var drawn = Picture.Render(file, withAlpha: true);

        for (var i = 0; i < Width * Height; i++)
        {
            var expected = MixOne(file, i % Width, i / Width);
            for (var channel = 0; channel < 4; channel++) Assert.InRange(drawn[channel][i] - (expected[channel] * 255), -0.501, 0.501);
        }
    }

    private static LayerFile CreateNoise()
    {
        var random = new Random(20261125);
        return ModelBuilder.File("noise.psd", Width, Height,
            Noise("Front", new Bounds(150, 10, 290, 400), random).With(layer => (layer.BlendMode, layer.OpacityByte) = (BlendMode.Screen, 200)),
            Noise("Middle", new Bounds(-20, 100, 310, 333), random).With(layer => layer.BlendMode = BlendMode.Overlay),
            Noise("Back", new Bounds(3, -5, 299, 430), random));
    }

    private static Layer Noise(string name, Bounds bounds, Random random)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = bounds };
        for (var role = PlaneRole.Alpha; role <= PlaneRole.Color2; role++)
        {
            var samples = new byte[bounds.Area];
            random.NextBytes(samples);
            // Long empty and solid stretches, as figures have them, take other ways through the code.
            if (role == PlaneRole.Alpha)
            {
                samples.AsSpan(0, samples.Length / 3).Clear();
                samples.AsSpan(samples.Length / 2, samples.Length / 4).Fill(255);
            }

            layer.Planes.Add(ModelBuilder.Raw(role, samples));
        }

        return layer;
    }

    private static double[] MixOne(LayerFile file, int x, int y)
    {
        double[] color = [0, 0, 0];
        var alpha = 0.0;
        foreach (var layer in file.GetChildren().Reverse().Where(layer => x >= layer.Left && x < layer.Left + layer.Width && y >= layer.Top && y < layer.Top + layer.Height))
        {
            var at = ((y - layer.Top) * layer.Width) + x - layer.Left;
            var above = Sample(layer, PlaneRole.Alpha, at) * layer.OpacityByte / 255;
            for (var channel = 0; channel < 3; channel++)
            {
                var source = Sample(layer, PlaneRole.Color0 + channel, at);
                var backdrop = alpha > 0 ? color[channel] / alpha : 0;
                color[channel] = (source * above * (1 - alpha)) + (color[channel] * (1 - above)) + (above * alpha * Mix(layer.BlendMode, backdrop, source));
            }

            alpha += above * (1 - alpha);
        }

        return [color[0] + 1 - alpha, color[1] + 1 - alpha, color[2] + 1 - alpha, alpha];
    }

    private static double Mix(BlendMode mode, double backdrop, double source) => mode switch
    {
        BlendMode.Screen => backdrop + source - (backdrop * source),
        BlendMode.Overlay => backdrop <= 0.5 ? 2 * backdrop * source : 1 - (2 * (1 - backdrop) * (1 - source)),
        _ => source,
    };

    private static double Sample(Layer layer, PlaneRole role, int at) => ((MemoryBytes)layer.FindPlane(role)!.Data).Bytes[at] / 255.0;

    private static byte[] Shrink(LayerFile file, int threads)
    {
        using var reader = new PixelReader(file);
        return new Compositor(file, reader, new CompositeOptions { Threads = threads }).RenderRaster(64, 64).Pixels;
    }
}
