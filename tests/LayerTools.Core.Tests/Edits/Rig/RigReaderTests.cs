using ImageMagick;
using LayerTools.Edits.Rig;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits.Rig;

/// <summary>Baked files as Magick.NET reads and puts them together, against sums worked out here by hand. The figure is invented.</summary>
public sealed class RigReaderTests : IDisposable
{
    private const int Width = 40;
    private const int Height = 30;

    /// <summary>Alpha of each part is rounded once when it is baked, and colours when Magick.NET mixes.</summary>
    private const double Rounding = 2.5;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Masks_clipping_a_blend_mode_and_an_effect_look_the_same_to_another_reader()
    {
        var file = LayerFiles.Create(folder["figure.psd"], new NewFileOptions { Width = Width, Height = Height });
        foreach (var layer in file.GetLayers().ToList()) layer.Detach();
        var half = new Bounds(0, 0, 20, Height);
        var head = Masked(file, Add(file, new Layer(LayerKind.Group, "Head", file.Detail.CreateLayerDetail(LayerKind.Group)) { BlendMode = BlendMode.PassThrough }), half, 255, outside: 0);
        Masked(file, Painted(file, "Eye", new Bounds(5, 5, 30, 12), 200, 40, 10, head), new Bounds(0, 0, Width, Height), 100, outside: 0);
        Painted(file, "Face", new Bounds(2, 2, 36, 20), 250, 210, 190, head);
        Painted(file, "Shade", new Bounds(0, 12, 18, 30), 128, 90, 60).Clipped = true;
        file.Find("Shade").BlendMode = BlendMode.Multiply;
        Masked(file, Painted(file, "Body", new Bounds(8, 10, 34, 28), 60, 120, 220), new Bounds(8, 10, 34, 28), 55, outside: 255).Mask!.Flags = LayerMask.InvertedFlag;
        Masked(file, Painted(file, "Arm", new Bounds(24, 3, 39, 26), 30, 180, 90), new Bounds(24, 3, 39, 26), 0, outside: 0).Mask!.Flags = LayerMask.DisabledFlag;
        GiveEffect(file.Find("Arm"));
        Painted(file, "Backdrop", new Bounds(0, 0, Width, Height), 119, 119, 119);
        file.Renumber();
        LayerFiles.Save(file, folder["figure.psd"], new SaveOptions());

        var read = LayerFiles.Read(folder["figure.psd"]);
        var edit = new RigEdit();
        edit.Plan(read, []).Apply();
        LayerFiles.Save(read, folder["baked.psd"], new SaveOptions());

        Assert.Equal("Head(Eye Face) Body Arm", read.Sketch());
        Assert.InRange(edit.Parts[0].FileDifference, 0, 2);
        var (seen, count) = Compose(folder["baked.psd"]);
        Assert.Equal(4, count);
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                var expected = Expect(x, y);
                for (var channel = 0; channel < 4; channel++)
                {
                    var got = seen[(4 * ((y * Width) + x)) + channel] / 255.0 * (channel == 3 ? 1 : seen[(4 * ((y * Width) + x)) + 3] / 255.0);
                    Assert.True(Math.Abs(expected[channel] - got) * 255 <= Rounding, FormattableString.Invariant($"channel {channel} at {x}, {y}: {got * 255:0.0} instead of {expected[channel] * 255:0.0}"));
                }
            }
        }
    }

    [Theory]
    [InlineData("grey-16.psd")]
    [InlineData("grey-32.psd")]
    [InlineData("rgb-16.psd")]
    [InlineData("rgb-32.psd")]
    [InlineData("grey-8.psd")]
    [InlineData("cmyk-8.psd")]
    [InlineData("lab-8.psd")]
    [InlineData("rgb-16-blocks-around.psd")]
    [InlineData("rgb-16-merged-alpha.psd")]
    public void Another_depth_or_mode_is_8_bit_light_to_another_reader(string name)
    {
        var file = LayerFiles.Read(SharedFiles.Fixtures.Single(path => Path.GetFileName(path) == name));
        new RigEdit { Keep = _ => true, AcceptDifference = true }.Plan(file, []).Apply();
        LayerFiles.Save(file, folder[name], new SaveOptions());

        using var images = new MagickImageCollection(folder[name]);

        var parts = file.GetLayers().Where(layer => !layer.IsGroup).Reverse().ToList();
        var layers = images.Skip(1).Where(image => image.GetAttribute("label") is { } label && parts.Exists(part => part.Name == label)).ToList();
        Assert.Equal(parts.Select(part => part.Name), layers.Select(image => image.GetAttribute("label")));
        Assert.All(images, image => Assert.Equal((8u, ColorSpace.sRGB), (image.Depth, image.ColorSpace)));
        using var reader = new PixelReader(file);
        foreach (var (part, image) in parts.Zip(layers, (part, image) => (part, image)))
        {
            Assert.Equal((part.Width, part.Height), ((int)image.Width, (int)image.Height));
            using var pixels = image.GetPixels();
            var theirs = pixels.ToByteArray(PixelMapping.RGBA)!;
            var ours = reader.ReadRaster(part).Pixels;
            Assert.True(ours.AsSpan().SequenceEqual(theirs), part.LayerPath);
        }
    }

    private static Layer Add(LayerFile file, Layer layer, Layer? group = null)
    {
        (group ?? file.Root).Append(layer);
        layer.Id = file.CreateId();
        return layer;
    }

    private static Layer Painted(LayerFile file, string name, Bounds bounds, byte red, byte green, byte blue, Layer? group = null)
    {
        var layer = Add(file, new Layer(LayerKind.Pixel, name, file.Detail.CreateLayerDetail(LayerKind.Pixel)) { Bounds = bounds }, group);
        foreach (var (role, value) in new[] { (PlaneRole.Alpha, (byte)255), (PlaneRole.Color0, red), (PlaneRole.Color1, green), (PlaneRole.Color2, blue) }) layer.Planes.Add(Even(file, role, bounds, value));
        return layer;
    }

    private static Layer Masked(LayerFile file, Layer layer, Bounds bounds, byte value, byte outside)
    {
        layer.Mask = new LayerMask { Bounds = bounds, DefaultColor = outside };
        layer.Planes.Add(Even(file, PlaneRole.UserMask, bounds, value));
        return layer;
    }

    /// <summary>The effect of a fixture that was built byte by byte: one colour over the layer.</summary>
    private static void GiveEffect(Layer layer)
    {
        var source = LayerFiles.Read(SharedFiles.Fixtures.Single(path => Path.GetFileName(path) == "effects-lrfx.psd"));
        var effect = source.GetLayers().SelectMany(other => ((PsdLayerDetail)other.Detail).Record.Blocks).First(block => block.Key == PsdKey.Parse("lrFX"));
        var detail = (PsdLayerDetail)layer.Detail;
        detail.Record = detail.Record with { Blocks = [.. detail.Record.Blocks, effect] };
    }

    private static Plane Even(LayerFile file, PlaneRole role, Bounds bounds, byte value) =>
        PlanePacker.Pack(role, Compression.PackBits, bounds.Width, bounds.Height, 8, file.Format, (_, row) => row.Fill(value), file.Spool);

    private static (byte[] Pixels, int Count) Compose(string path)
    {
        using var images = new MagickImageCollection(path);
        using var canvas = new MagickImage(MagickColors.Transparent, Width, Height);
        var count = 0;
        foreach (var image in images.Skip(1).Where(image => image.Width > 1 && image.GetAttribute("label") is "Eye" or "Face" or "Body" or "Arm"))
        {
            canvas.Composite(image, image.Page.X, image.Page.Y, image.Compose);
            count++;
        }

        using var pixels = canvas.GetPixels();
        return (pixels.ToByteArray(PixelMapping.RGBA)!, count);
    }

    /// <summary>Premultiplied red, green, blue and alpha of the original figure, layer by layer.</summary>
    private static double[] Expect(int x, int y)
    {
        var picture = new double[4];
        bool In(int left, int top, int right, int bottom) => x >= left && x < right && y >= top && y < bottom;
        // The effect lays pure red with an opacity of 192 over the arm.
        const double Effect = 192 / 255.0;
        if (In(24, 3, 39, 26)) Over(picture, (30 * (1 - Effect)) + (255 * Effect), 180 * (1 - Effect), 90 * (1 - Effect), 1);
        if (In(8, 10, 34, 28))
        {
            // The inverted mask of 55 leaves 200; the shade multiplies inside of the body.
            if (In(0, 12, 18, 30)) Over(picture, 60 * 128 / 255.0, 120 * 90 / 255.0, 220 * 60 / 255.0, 200 / 255.0);
            else Over(picture, 60, 120, 220, 200 / 255.0);
        }

        if (x < 20)
        {
            if (In(2, 2, 36, 20)) Over(picture, 250, 210, 190, 1);
            if (In(5, 5, 30, 12)) Over(picture, 200, 40, 10, 100 / 255.0);
        }

        return picture;
    }

    private static void Over(double[] picture, double red, double green, double blue, double alpha)
    {
        var color = new[] { red / 255, green / 255, blue / 255, 1 };
        for (var channel = 0; channel < 4; channel++) picture[channel] = (picture[channel] * (1 - alpha)) + (color[channel] * alpha);
    }
}
