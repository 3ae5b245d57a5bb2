using System.Buffers.Binary;
using CsCheck;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels;

public class PixelReaderTests
{
    private static readonly Bounds TwoByOne = Bounds.FromSize(3, 4, 2, 1);

    [Fact]
    public void A_raster_holds_colours_and_alpha()
    {
        var raster = Read(ColorMode.Rgb, 8, (PlaneRole.Color0, [1, 2]), (PlaneRole.Color1, [3, 4]), (PlaneRole.Color2, [5, 6]), (PlaneRole.Alpha, [7, 8]));
        Assert.Equal([1, 3, 5, 7, 2, 4, 6, 8], raster.Pixels);
        Assert.Equal((2, 1), (raster.Width, raster.Height));
    }

    [Fact]
    public void A_layer_without_alpha_is_opaque() =>
        Assert.Equal([1, 0, 5, 255, 2, 0, 6, 255], Read(ColorMode.Rgb, 8, (PlaneRole.Color0, [1, 2]), (PlaneRole.Color2, [5, 6])).Pixels);

    [Fact]
    public void Grey_fills_all_three_colours() =>
        Assert.Equal([9, 9, 9, 1, 8, 8, 8, 2], Read(ColorMode.Grayscale, 8, (PlaneRole.Color0, [9, 8]), (PlaneRole.Alpha, [1, 2])).Pixels);

    [Fact]
    public void Words_are_rounded() => Assert.Equal(
        Enumerable.Range(0, 65536).Select(v => (byte)Math.Round(v * 255 / 65535.0, MidpointRounding.AwayFromZero)),
        Enumerable.Range(0, 65536).Select(v => SampleConverter.FromWord((ushort)v)));

    [Fact]
    public void Light_is_encoded_as_IEC_61966_2_1_says()
    {
        for (var i = -100; i <= 20_100; i++)
        {
            var linear = i / 20_000f;
            var clamped = Math.Min(Math.Max((double)linear, 0), 1);
            var encoded = clamped <= 0.0031308 ? 12.92 * clamped : (1.055 * Math.Pow(clamped, 1 / 2.4)) - 0.055;
            Assert.InRange(SampleConverter.EncodeLight(linear) - (255 * encoded), -0.5001, 0.5001);
        }
    }

    [Theory]
    [InlineData(float.NaN, 0)]
    [InlineData(float.PositiveInfinity, 255)]
    [InlineData(float.NegativeInfinity, 0)]
    [InlineData(1f, 255)]
    public void Floats_that_are_no_light_are_cut_off(float linear, byte expected) => Assert.Equal(expected, SampleConverter.EncodeLight(linear));

    [Fact]
    public void At_32_bits_colours_are_light_and_alpha_is_not()
    {
        var half = Floats(0.5f, 2f);
        Assert.Equal([188, 188, 188, 128, 255, 255, 255, 255],
            Read(ColorMode.Rgb, 32, (PlaneRole.Color0, half), (PlaneRole.Color1, half), (PlaneRole.Color2, half), (PlaneRole.Alpha, half)).Pixels);
    }

    [Fact]
    public void Inks_are_turned_to_colours() => // stored values count from full ink to none: 255 · 204/255 · 128/255 = 102
        Assert.Equal([102, 128, 0, 255, 255, 255, 255, 255],
            Read(ColorMode.Cmyk, 8, (PlaneRole.Color0, [204, 255]), (PlaneRole.Color1, [255, 255]), (PlaneRole.Color2, [0, 255]), (PlaneRole.Color3, [128, 255])).Pixels);

    [Fact]
    public void Lab_is_turned_to_colours() => // L* 100 is white; 53.585 is the grey of level 128
        Assert.Equal([255, 255, 255, 9, 128, 128, 128, 8],
            Read(ColorMode.Lab, 16, (PlaneRole.Color0, [255, 255, 0x89, 0x2C]), (PlaneRole.Color1, [128, 128, 128, 128]), (PlaneRole.Color2, [128, 128, 128, 128]), (PlaneRole.Alpha, [9, 9, 8, 8])).Pixels);

    [Fact]
    public void A_bit_that_is_set_is_black() => Assert.Equal([255, 255, 255, 255, 0, 0, 0, 255], Read(ColorMode.Bitmap, 1, (PlaneRole.Color0, [0b0100_0000])).Pixels);

    [Fact]
    public void A_duotone_reads_as_grey() => Assert.Equal([9, 9, 9, 255, 8, 8, 8, 255], Read(ColorMode.Duotone, 8, (PlaneRole.Color0, [9, 8])).Pixels);

    [Theory]
    [InlineData(ColorMode.Multichannel, 8)]
    [InlineData(ColorMode.Indexed, 16)]
    [InlineData(ColorMode.Rgb, 1)]
    public void Other_colours_are_refused_by_name_but_their_samples_are_not(ColorMode mode, int bitDepth)
    {
        var (file, layer) = Create(mode, bitDepth, TwoByOne, (PlaneRole.Color0, [1, 2, 3, 4]));
        using var reader = new PixelReader(file);
        var error = Assert.Throws<LayeredFileException>(() => reader.ReadRaster(layer));
        Assert.Equal(LayeredFileErrorKind.NotSupported, error.Kind);
        Assert.Contains(mode.ToString(), error.Message, StringComparison.Ordinal);
        Assert.NotNull(reader.ReadPlane(layer, PlaneRole.Color0));
    }

    [Theory]
    [InlineData(8, "FFFF")]
    [InlineData(16, "FFFFFFFF")]
    [InlineData(32, "3F8000003F800000")]
    public void A_mask_without_samples_has_its_default_colour(int bitDepth, string expected)
    {
        var (file, layer) = Create(ColorMode.Rgb, bitDepth, TwoByOne);
        layer.Mask = new LayerMask { Bounds = TwoByOne, DefaultColor = 255 };
        layer.Planes = [new Plane(PlaneRole.UserMask, Plane.NoCompressionWord, MemoryBytes.Empty), new Plane(PlaneRole.Alpha, (int)Compression.PackBits, MemoryBytes.Empty)];
        using var reader = new PixelReader(file);
        Assert.Equal(expected, Convert.ToHexString(reader.ReadPlane(layer, PlaneRole.UserMask)!));
        Assert.All(reader.ReadPlane(layer, PlaneRole.Alpha)!, sample => Assert.Equal(0, sample));
        Assert.Null(reader.ReadPlane(layer, PlaneRole.Color0));
    }

    [Theory]
    [InlineData(0, "01", "stores 1 bytes where 2")]
    [InlineData(1, "00", "table of packed row lengths is cut short")]
    [InlineData(1, "0003 0101", "Row 0 says 3 packed bytes where 2 are left")]
    [InlineData(1, "0009 000000000000000000", "more than any row of 2 samples takes")]
    [InlineData(1, "0002 0001", "Row 0: A packed row holds 1 bytes where 2")]
    [InlineData(2, "0102", "ZIP data")]
    [InlineData(2, "1838 6DE2 8400 0000 0000", "ZIP data")]
    [InlineData(3, "789C", "ZIP data")]
    [InlineData(4, "0102", "compression 4, which does not exist")]
    public void Damage_names_file_layer_and_channel(int compression, string data, string problem)
    {
        var (file, layer) = Create(ColorMode.Rgb, 8, TwoByOne);
        layer.Planes = [new Plane(PlaneRole.Alpha, compression, new MemoryBytes(Convert.FromHexString(data.Replace(" ", string.Empty))))];
        using var reader = new PixelReader(file);
        var error = Assert.Throws<LayeredFileException>(() => reader.ReadPlane(layer, PlaneRole.Alpha));
        Assert.Equal(LayeredFileErrorKind.Damaged, error.Kind);
        Assert.Equal("figure.psd", error.Path);
        Assert.Contains("Head/Eye L", error.Section, StringComparison.Ordinal);
        Assert.Contains("alpha", error.Section, StringComparison.Ordinal);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(16)]
    [InlineData(32)]
    public void Random_bytes_are_damage_or_samples_but_nothing_worse(int bitDepth) =>
        Gen.Select(Gen.Int[-2, 5], Gen.Byte.Array[0, 60], Gen.Int[0, 9], Gen.Int[0, 9], Gen.Bool).Sample((compression, data, width, height, isPsb) =>
        {
            // Half of them begin like a zlib stream, so that the inflater gets to see them.
            if (compression is 2 or 3 && data.Length > 2 && isPsb) (data[0], data[1]) = (0x78, 0x9C);
            var layer = ModelBuilder.Pixel("Eye L", Bounds.FromSize(0, 0, width, height));
            layer.Planes = [new Plane(PlaneRole.Alpha, compression, new MemoryBytes(data))];
            var file = new LayerFile("figure.psd", isPsb ? FileFormat.Psb : FileFormat.Psd, 10, 10, ColorMode.Rgb, bitDepth, new StubFileDetail());
            file.Root.Append(layer);
            file.Renumber();
            var mirror = new MirrorEdit().Plan(file, [layer]);
            var (read, reflected) = (Try(() => Read(file, layer)), Try(mirror.Apply));

            // What cannot be read cannot be reflected, and the other way round.
            Assert.Equal(read, reflected);
            Assert.Equal(read ? 2 : 1, file.LayerCount);
        });

    [Fact]
    public void A_layer_beyond_the_memory_limit_is_refused_by_name()
    {
        var (file, layer) = Create(ColorMode.Rgb, 8, Bounds.FromSize(0, 0, 1024, 257));
        using var reader = new PixelReader(file, new ReadLimits { MemoryMegabytes = 1 });
        var error = Assert.Throws<LayeredFileException>(() => reader.ReadRaster(layer));
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        Assert.Contains(nameof(ReadLimits.MemoryMegabytes), error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rectangle_beyond_all_arrays_is_refused_without_trying()
    {
        var (file, layer) = Create(ColorMode.Rgb, 8, new Bounds(-2_000_000_000, 0, 2_000_000_000, 300_000));
        layer.Planes = [new Plane(PlaneRole.Alpha, (int)Compression.PackBits, MemoryBytes.Empty)];
        using var reader = new PixelReader(file, new ReadLimits { MemoryMegabytes = int.MaxValue });
        Assert.Throws<LayeredFileException>(() => reader.ReadPlane(layer, PlaneRole.Alpha));
        Assert.Throws<LayeredFileException>(() => reader.ReadRaster(layer));
    }

    [Fact]
    public void Groups_and_empty_layers_have_empty_rasters()
    {
        var (file, layer) = Create(ColorMode.Rgb, 8, Bounds.Empty);
        using var reader = new PixelReader(file);
        Assert.Empty(reader.ReadRaster(layer).Pixels);
        Assert.Empty(reader.ReadRaster(layer.Parent!).Pixels);
    }

    [Fact]
    public void Several_threads_can_read_at_once()
    {
        var paths = SharedFiles.Fixtures;
        Assert.NotEmpty(paths);
        var file = LayerFiles.Read(paths.First(path => Path.GetFileName(path) == "channels-mixed.psd"));
        var layers = file.GetLayers().ToList();
        using var reader = new PixelReader(file);
        var expected = layers.Select(layer => reader.ReadRaster(layer).Pixels).ToList();
        Parallel.For(0, 200, i => Assert.Equal(expected[i % layers.Count], reader.ReadRaster(layers[i % layers.Count]).Pixels));
    }

    public static TheoryData<string> SoundFiles() => [.. SharedFiles.Fixtures.Concat(SharedFiles.FindLayered("corpus")).Concat(SharedFiles.FindLayered("models"))];

    [Theory]
    [MemberData(nameof(SoundFiles))]
    public void Every_channel_of_a_sound_file_unpacks(string path)
    {
        var file = ReadTree(path);
        using var reader = new PixelReader(file);
        foreach (var layer in file.GetLayers())
        {
            foreach (var plane in layer.Planes)
            {
                var bounds = layer.GetPlaneBounds(plane.Role);
                Assert.Equal(bounds.IsEmpty ? 0 : PlaneRows.GetRowBytes(bounds.Width, file.BitDepth) * bounds.Height, reader.ReadPlane(layer, plane.Role)!.Length);
            }
        }
    }

    private static bool Try(Action action)
    {
        try
        {
            action();
            return true;
        }
        catch (LayeredFileException)
        {
            return false;
        }
    }

    private static void Read(LayerFile file, Layer layer)
    {
        using var reader = new PixelReader(file);
        reader.ReadPlane(layer, PlaneRole.Alpha);
    }

    private static LayerFile ReadTree(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayeredFileException error) when (!SharedFiles.Fixtures.Contains(path))
        {
            // Which files the tree can be read from is for the reader's tests to say.
            Assert.Skip(error.Message);
            throw;
        }
    }

    private static Raster Read(ColorMode mode, int bitDepth, params (PlaneRole Role, byte[] Samples)[] planes)
    {
        var (file, layer) = Create(mode, bitDepth, TwoByOne, planes);
        using var reader = new PixelReader(file);
        return reader.ReadRaster(layer);
    }

    private static (LayerFile File, Layer Layer) Create(ColorMode mode, int bitDepth, Bounds bounds, params (PlaneRole Role, byte[] Samples)[] planes)
    {
        var file = new LayerFile("figure.psd", FileFormat.Psd, 10, 10, mode, bitDepth, new StubFileDetail());
        var layer = ModelBuilder.Pixel("Eye L", TwoByOne);
        layer.Bounds = bounds;
        layer.Planes = [.. planes.Select(plane => ModelBuilder.Raw(plane.Role, plane.Samples))];
        file.Root.Append(ModelBuilder.Group("Head", layer));
        file.Renumber();
        return (file, layer);
    }

    private static byte[] Floats(params float[] values)
    {
        var bytes = new byte[4 * values.Length];
        for (var i = 0; i < values.Length; i++) BinaryPrimitives.WriteSingleBigEndian(bytes.AsSpan(4 * i), values[i]);
        return bytes;
    }
}
