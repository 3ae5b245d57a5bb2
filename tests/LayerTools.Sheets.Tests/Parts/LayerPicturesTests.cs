using CsCheck;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Parts;
using LayerTools.Sheets.Parts;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Parts;

public class LayerPicturesTests
{
    private static readonly Gen<Bounds> Places = Gen.Select(Gen.Int[-9, 9], Gen.Int[-9, 9], Gen.Int[1, 12], Gen.Int[1, 12]).Select((x, y, w, h) => Bounds.FromSize(x, y, w, h));

    [Fact]
    public void At_full_size_a_part_is_what_the_reader_reads()
    {
        var part = ModelBuilder.Pixel("Iris L", Bounds.FromSize(3, 4, 20, 10));
        Assert.Equal(ReadWhole(part), Draw(part).Pixels);
    }

    [Fact]
    public void A_part_without_alpha_is_opaque()
    {
        var part = ModelBuilder.Pixel("Backdrop");
        part.Planes.RemoveAll(plane => plane.Role == PlaneRole.Alpha);
        Assert.All(Alpha(Draw(part)), alpha => Assert.Equal(255, alpha));
    }

    [Fact]
    public void A_mask_cuts_the_part_wherever_both_lie() => Gen.Select(Places, Places, Gen.Bool, Gen.Bool, Gen.Int[0, 99]).Sample((place, maskPlace, showsOutside, isInverted, seed) =>
    {
        var part = ModelBuilder.Pixel("Iris L", place);
        var samples = new byte[maskPlace.Area];
        new Random(seed).NextBytes(samples);
        part.Mask = new LayerMask { Bounds = maskPlace, DefaultColor = showsOutside ? (byte)255 : (byte)0, Flags = isInverted ? (byte)4 : (byte)0 };
        part.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, samples));
        var drawn = Alpha(Draw(part));
        for (var y = place.Top; y < place.Bottom; y++)
        {
            for (var x = place.Left; x < place.Right; x++)
            {
                var isInside = !Bounds.FromSize(x, y, 1, 1).Intersect(maskPlace).IsEmpty;
                var sample = isInside ? samples[(y - maskPlace.Top) * maskPlace.Width + x - maskPlace.Left] : part.Mask.DefaultColor;
                Assert.Equal(isInverted ? 255 - sample : sample, drawn[(y - place.Top) * place.Width + x - place.Left]);
            }
        }
    });

    [Fact]
    public void A_disabled_mask_does_nothing()
    {
        var part = Masked(new LayerMask { Flags = 2 });
        Assert.All(Alpha(Draw(part)), alpha => Assert.Equal(255, alpha));
    }

    [Theory]
    [InlineData(255, 0)]
    [InlineData(51, 204)]
    [InlineData(0, 255)]
    public void A_mask_of_less_density_hides_less(int density, int left)
    {
        var part = Masked(new LayerMask { UserDensity = (byte)density });
        Assert.All(Alpha(Draw(part)), alpha => Assert.Equal(left, alpha));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(255)]
    public void A_mask_without_samples_has_one_value_everywhere(int value)
    {
        var part = ModelBuilder.Pixel("Iris L");
        part.Mask = new LayerMask { Bounds = part.Bounds, DefaultColor = (byte)value };
        Assert.All(Alpha(Draw(part)), alpha => Assert.Equal(value, alpha));
    }

    [Fact]
    public void Grey_files_have_one_colour_channel()
    {
        var part = ModelBuilder.Pixel("Sketch");
        part.Planes.RemoveAll(plane => plane.Role is PlaneRole.Color1 or PlaneRole.Color2);
        var file = new LayerFile("grey.psd", FileFormat.Psd, 100, 60, ColorMode.Grayscale, 8, new StubFileDetail());
        file.Root.Append(part);
        using var pictures = new LayerPictures(file);
        var picture = pictures.Draw(part, 4, 2, CancellationToken.None);
        for (var i = 0; i < picture.Pixels.Length; i += 4) Assert.True(picture.Pixels[i] == picture.Pixels[i + 1] && picture.Pixels[i] == picture.Pixels[i + 2]);
        Assert.NotEqual(picture.Pixels[0], picture.Pixels[4]);
    }

    [Fact]
    public void Sixteen_bits_become_eight()
    {
        var part = new Layer(LayerKind.Pixel, "Nose", new StubLayerDetail()) { Bounds = Bounds.FromSize(0, 0, 2, 1) };
        part.Planes.Add(ModelBuilder.Raw(PlaneRole.Alpha, [0xFF, 0xFF, 0x80, 0x80]));
        for (var role = PlaneRole.Color0; role <= PlaneRole.Color2; role++) part.Planes.Add(ModelBuilder.Raw(role, [0x10, 0x10, 0xC8, 0xC8]));
        var file = new LayerFile("deep.psd", FileFormat.Psd, 2, 1, ColorMode.Rgb, 16, new StubFileDetail());
        file.Root.Append(part);
        using var pictures = new LayerPictures(file);
        Assert.Equal([16, 16, 16, 255, 200, 200, 200, 128], pictures.Draw(part, 2, 1, CancellationToken.None).Pixels);
    }

    [Fact]
    public void Rows_that_are_passed_over_leave_the_colours_in_step()
    {
        var alpha = Enumerable.Range(0, 40).Select(i => i / 4 % 3 == 0 ? (byte)255 : (byte)0).ToArray();
        var part = ModelBuilder.Pixel("Lash L", Bounds.FromSize(0, 0, 4, 10), alpha);
        var (drawn, whole) = (Draw(part).Pixels, ReadWhole(part));
        for (var i = 0; i < 40; i++) Assert.Equal(alpha[i] == 0 ? new byte[4] : whole[(4 * i)..(4 * i + 4)], drawn[(4 * i)..(4 * i + 4)]);
    }

    [Fact]
    public void A_damaged_channel_and_a_foreign_colour_mode_are_errors_of_the_file()
    {
        var part = ModelBuilder.Pixel("Nose");
        part.Planes[1] = ModelBuilder.Raw(PlaneRole.Color0, [1]);
        Assert.Equal(LayeredFileErrorKind.Damaged, Assert.Throws<LayeredFileException>(() => Draw(part)).Kind);

        var ink = new LayerFile("print.psd", FileFormat.Psd, 100, 60, ColorMode.Multichannel, 8, new StubFileDetail());
        ink.Root.Append(ModelBuilder.Pixel("Nose"));
        using var pictures = new LayerPictures(ink);
        Assert.Equal(LayeredFileErrorKind.NotSupported, Assert.Throws<LayeredFileException>(() => pictures.Draw(ink.GetChildren()[0], 1, 1, CancellationToken.None)).Kind);
    }

    [Fact]
    public void Inks_and_other_colours_are_drawn_as_RGB()
    {
        var file = new LayerFile("print.psd", FileFormat.Psd, 100, 60, ColorMode.Cmyk, 8, new StubFileDetail());
        var part = ModelBuilder.Pixel("Nose", Bounds.FromSize(0, 0, 1, 1));
        part.Planes = [.. new byte[] { 204, 255, 0, 128 }.Select((value, channel) => ModelBuilder.Raw(PlaneRole.Color0 + channel, [value]))];
        file.Root.Append(part);
        using var pictures = new LayerPictures(file);

        Assert.Equal([102, 128, 0, 255], pictures.Draw(part, 1, 1, CancellationToken.None).Pixels);
    }

    [Fact]
    public void An_impossibly_large_rectangle_is_refused_before_memory_is_taken()
    {
        var part = ModelBuilder.Pixel("Nose");
        part.Bounds = Bounds.FromSize(0, 0, int.MaxValue / 8, 1);
        using var pictures = new LayerPictures(ModelBuilder.File(part));
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, Assert.Throws<LayeredFileException>(() => pictures.Draw(part, 1, 1, CancellationToken.None)).Kind);
    }

    [Fact]
    public void Alpha_that_stores_nothing_is_transparent_at_once()
    {
        var part = ModelBuilder.Pixel("Nose");
        part.Bounds = Bounds.FromSize(0, 0, 500_000, 500_000);
        part.Planes[0] = new Plane(PlaneRole.Alpha, 0, MemoryBytes.Empty);
        using var pictures = new LayerPictures(ModelBuilder.File(part));
        Assert.All(pictures.Draw(part, 2, 2, CancellationToken.None).Pixels, sample => Assert.Equal(0, sample));
    }

    [Fact]
    public void Drawing_stops_when_asked()
    {
        var part = ModelBuilder.Pixel("Nose");
        using var pictures = new LayerPictures(ModelBuilder.File(part));
        Assert.Throws<OperationCanceledException>(() => pictures.Draw(part, 1, 1, new CancellationToken(canceled: true)));
    }

    private static Layer Masked(LayerMask mask)
    {
        var part = ModelBuilder.Pixel("Iris L");
        mask.Bounds = part.Bounds;
        part.Mask = mask;
        part.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, new byte[part.Bounds.Area]));
        return part;
    }

    private static Raster Draw(Layer part)
    {
        using var pictures = new LayerPictures(part.GetFile() ?? ModelBuilder.File(part));
        return pictures.Draw(part, part.Width, part.Height, CancellationToken.None);
    }

    private static byte[] ReadWhole(Layer part)
    {
        using var reader = new PixelReader(part.GetFile() ?? ModelBuilder.File(part));
        return reader.ReadRaster(part).Pixels;
    }

    private static byte[] Alpha(Raster raster) => [.. raster.Pixels.Where((_, i) => i % 4 == 3)];
}
