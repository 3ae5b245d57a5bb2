using ImageMagick;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing.Blending;

/// <summary>Random translucent pictures mixed by Magick.NET, which follows the same formulas, and by us.</summary>
public class MagickBlendTests
{
    private const int Side = 64;

    /// <summary>Alpha and colours of Magick.NET are rounded to 8 bits after mixing; taken out of premultiplication and put on white both ways, that is up to 1.</summary>
    private const int Rounding = 1;

    [Theory]
    [InlineData(BlendMode.Normal, CompositeOperator.Over)]
    [InlineData(BlendMode.Multiply, CompositeOperator.Multiply)]
    [InlineData(BlendMode.Screen, CompositeOperator.Screen)]
    [InlineData(BlendMode.Overlay, CompositeOperator.Overlay)]
    [InlineData(BlendMode.HardLight, CompositeOperator.HardLight)]
    [InlineData(BlendMode.Exclusion, CompositeOperator.Exclusion)]
    public void Translucent_pictures_mix_as_an_independent_library_mixes_them(BlendMode mode, CompositeOperator compositeOperator) => Compare(mode, compositeOperator, opaque: false);

    /// <summary>For these the library takes another path where pixels are translucent, so that both agree on opaque ones only. Soft light has another formula there, and difference also takes one opacity from the other. The four modes of hue and luminosity are mixed by another model of colour there.</summary>
    [Theory]
    [InlineData(BlendMode.Darken, CompositeOperator.Darken)]
    [InlineData(BlendMode.Lighten, CompositeOperator.Lighten)]
    [InlineData(BlendMode.ColorDodge, CompositeOperator.ColorDodge)]
    [InlineData(BlendMode.ColorBurn, CompositeOperator.ColorBurn)]
    [InlineData(BlendMode.LinearBurn, CompositeOperator.LinearBurn)]
    [InlineData(BlendMode.LinearDodge, CompositeOperator.LinearDodge)]
    [InlineData(BlendMode.LinearLight, CompositeOperator.LinearLight)]
    [InlineData(BlendMode.VividLight, CompositeOperator.VividLight)]
    [InlineData(BlendMode.PinLight, CompositeOperator.PinLight)]
    [InlineData(BlendMode.HardMix, CompositeOperator.HardMix)]
    [InlineData(BlendMode.Subtract, CompositeOperator.MinusSrc)]
    [InlineData(BlendMode.Divide, CompositeOperator.DivideSrc)]
    public void Opaque_pictures_mix_as_an_independent_library_mixes_them(BlendMode mode, CompositeOperator compositeOperator) => Compare(mode, compositeOperator, opaque: true);

    private static void Compare(BlendMode mode, CompositeOperator compositeOperator, bool opaque)
    {
        var random = new Random(7 + (int)mode);
        var behind = Noise(random, opaque);
        var front = Noise(random, opaque);
        var file = Create(ColorMode.Rgb, 8, Side, Side, ToLayer("Front", front).With(layer => layer.BlendMode = mode), ToLayer("Behind", behind));

        var drawn = Picture.Render(file, withAlpha: true);

        var mixed = Mix(behind, front, compositeOperator);
        for (var i = 0; i < Side * Side; i++)
        {
            var alpha = mixed[(4 * i) + 3];
            Assert.InRange(drawn[3][i] - alpha, -Rounding, Rounding);
            for (var channel = 0; channel < 3; channel++)
            {
                var onWhite = ((mixed[(4 * i) + channel] * alpha) + (255.0 * (255 - alpha))) / 255;
                if (IsUndecided(mode, behind[(4 * i) + channel], front[(4 * i) + channel])) continue;
                Assert.InRange(drawn[channel][i] - onWhite, -Rounding - 0.5, Rounding + 0.5);
            }
        }
    }

    /// <summary>Where a formula says 0/0 the standard names the result, and the library decides otherwise; so it does on the step of hard mix, where we follow real files.</summary>
    private static bool IsUndecided(BlendMode mode, byte backdrop, byte source) =>
        (mode, backdrop, source) is (BlendMode.ColorDodge, 0, 255) or (BlendMode.ColorBurn, 255, 0) || (mode == BlendMode.HardMix && backdrop + source == 255);

    private static byte[] Noise(Random random, bool opaque)
    {
        var pixels = new byte[4 * Side * Side];
        random.NextBytes(pixels);
        // The ends of the range, where formulas have cases of their own.
        for (var i = 0; i < pixels.Length / 8; i++) pixels[i] = random.Next(2) == 0 ? (byte)0 : (byte)255;
        for (var i = 3; opaque && i < pixels.Length; i += 4) pixels[i] = 255;
        return pixels;
    }

    private static Layer ToLayer(string name, byte[] pixels)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = new Bounds(0, 0, Side, Side) };
        for (var channel = 0; channel < 4; channel++)
        {
            var role = channel == 3 ? PlaneRole.Alpha : PlaneRole.Color0 + channel;
            layer.Planes.Add(ModelBuilder.Raw(role, [.. Enumerable.Range(0, Side * Side).Select(i => pixels[(4 * i) + channel])]));
        }

        return layer;
    }

    private static byte[] Mix(byte[] behind, byte[] front, CompositeOperator compositeOperator)
    {
        var settings = new PixelReadSettings(Side, Side, StorageType.Char, PixelMapping.RGBA);
        using var image = new MagickImage(behind, settings);
        using var above = new MagickImage(front, settings);
        image.Composite(above, compositeOperator);
        using var pixels = image.GetPixels();
        return pixels.ToByteArray(PixelMapping.RGBA)!;
    }
}
