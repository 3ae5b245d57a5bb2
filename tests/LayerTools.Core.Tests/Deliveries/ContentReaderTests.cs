using System.Buffers.Binary;
using LayerTools.Deliveries;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Core.Tests.Deliveries;

public class ContentReaderTests
{
    private const int Width = 13;
    private const int Height = 9;

    public static TheoryData<int> Depths => [8, 16, 32];

    [Theory]
    [MemberData(nameof(Depths))]
    public void The_same_pixels_are_the_same_however_they_are_packed(int depth)
    {
        using var spool = new SpoolFile();
        var expected = Read(Packed(depth, Compression.Raw, spool));
        foreach (var compression in new[] { Compression.PackBits, Compression.Zip, Compression.ZipPrediction })
        {
            Assert.Equal(expected, Read(Packed(depth, compression, spool)));
        }
    }

    [Theory]
    [MemberData(nameof(Depths))]
    public void One_other_sample_is_other_content(int depth)
    {
        using var spool = new SpoolFile();
        var expected = Read(Packed(depth, Compression.Raw, spool)).Pixels;
        for (var role = PlaneRole.Alpha; role <= PlaneRole.Color2; role++)
        {
            // The last bit of the last sample.
            Assert.NotEqual(expected, Read(Packed(depth, Compression.Raw, spool, (changed, samples) => samples[^1] ^= (byte)(changed == role ? 1 : 0))).Pixels);
        }
    }

    [Theory]
    [MemberData(nameof(Depths))]
    public void Colours_of_transparent_pixels_do_not_count(int depth)
    {
        using var spool = new SpoolFile();
        var size = depth / 8;
        Assert.Equal(Read(Hole(0)), Read(Hole(77)));

        LayerFile Hole(byte color) => Packed(depth, Compression.Raw, spool, (role, samples) => samples.AsSpan(20 * size, size).Fill(role == PlaneRole.Alpha ? (byte)0 : color));
    }

    [Fact]
    public void Depth_counts()
    {
        using var spool = new SpoolFile();
        Assert.Equal(3, Depths.Select(depth => Read(Packed(depth, Compression.Raw, spool)).Pixels).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Depths))]
    public void A_layer_without_alpha_is_opaque(int depth)
    {
        using var spool = new SpoolFile();
        var opaque = Packed(depth, Compression.Raw, spool, (role, samples) =>
        {
            if (role != PlaneRole.Alpha) return;
            samples.AsSpan().Fill(255);
            for (var i = 0; depth == 32 && i < samples.Length; i += 4) BinaryPrimitives.WriteSingleBigEndian(samples.AsSpan(i), 1);
        });
        var bare = Packed(depth, Compression.Raw, spool);
        bare.GetLayers().Single().Planes.RemoveAt(0);
        Assert.Equal(Read(opaque).Pixels, Read(bare).Pixels);
    }

    [Fact]
    public void A_larger_stored_rectangle_does_not_count()
    {
        var tight = Painted(painting => painting);
        var wide = Painted(painting => painting.Within(new Bounds(0, 1, 60, 50)));
        Assert.NotEqual(tight.GetLayers().Single().Bounds, wide.GetLayers().Single().Bounds);
        Assert.Equal(Read(tight), Read(wide));
    }

    [Fact]
    public void The_place_is_apart_from_the_pixels()
    {
        var (here, there) = (Painted(painting => painting), Painted(painting => painting, shift: 7));
        Assert.Equal(Read(here).Pixels, Read(there).Pixels);
        Assert.Equal(Read(here).Painted.Shift(7, 0), Read(there).Painted);
    }

    [Fact]
    public void Odd_filling_of_bits_does_not_count()
    {
        // 5 bits a row; the other 3 of each byte are filling.
        Assert.Equal(Read(Bits(0b10101_000, 0b01110_000)), Read(Bits(0b10101_111, 0b01110_010)));
        Assert.NotEqual(Read(Bits(0b10101_000, 0b01110_000)).Pixels, Read(Bits(0b10100_000, 0b01110_000)).Pixels);

        static LayerFile Bits(byte one, byte two)
        {
            var file = new LayerFile("bits.psd", FileFormat.Psd, 5, 2, ColorMode.Bitmap, 1, new StubFileDetail());
            var layer = new Layer(LayerKind.Pixel, "Ink", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 5, 2) };
            layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, [one, two]));
            file.Root.Append(layer);
            return file;
        }
    }

    [Fact]
    public void A_mask_counts_apart_from_its_place_and_its_rectangle()
    {
        var bare = Read(Masked(null, default));
        var masked = Read(Masked([1, 2, 3, 4], new Bounds(5, 5, 7, 7)));
        Assert.Equal((string.Empty, string.Empty), (bare.Mask, bare.MaskShape));
        Assert.Equal(bare.Pixels, masked.Pixels);

        // A row of the default colour above is no other mask; one moved by a pixel lies otherwise on the pixels.
        Assert.Equal(masked, Read(Masked([0, 0, 1, 2, 3, 4], new Bounds(5, 4, 7, 7))));
        var moved = Read(Masked([1, 2, 3, 4], new Bounds(6, 5, 8, 7)));
        Assert.Equal(masked.MaskShape, moved.MaskShape);
        Assert.NotEqual(masked.Mask, moved.Mask);
        Assert.True(masked.HasMaskOf(moved, 1, 0));
        Assert.False(masked.HasMaskOf(moved, 0, 0));
        Assert.NotEqual(masked.MaskShape, Read(Masked([1, 2, 3, 5], new Bounds(5, 5, 7, 7))).MaskShape);
        Assert.NotEqual(masked.MaskShape, Read(Masked([1, 2, 3, 4], new Bounds(5, 5, 7, 7), mask => mask.Flags = LayerMask.InvertedFlag)).MaskShape);
        Assert.NotEqual(masked.MaskShape, Read(Masked([1, 2, 3, 4], new Bounds(5, 5, 7, 7), mask => mask.UserFeather = 2)).MaskShape);
    }

    [Fact]
    public void What_stores_nothing_takes_no_time_however_large_it_is()
    {
        var layer = new Layer(LayerKind.Pixel, "Void", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 60_000_000, 60_000_000) };
        for (var role = PlaneRole.Alpha; role <= PlaneRole.Color2; role++) layer.Planes.Add(ModelBuilder.Raw(role, []));
        Assert.True(Read(ModelBuilder.File(layer)).IsEmpty);
        layer.Planes.RemoveAt(0);
        Assert.True(Read(ModelBuilder.File(layer)).IsEmpty);
    }

    [Fact]
    public void A_rectangle_larger_than_any_canvas_is_refused()
    {
        var layer = new Layer(LayerKind.Pixel, "Huge", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 60_000_000, 1) };
        for (var role = PlaneRole.Alpha; role <= PlaneRole.Color2; role++) layer.Planes.Add(ModelBuilder.Raw(role, [1, 2, 3]));
        var error = Assert.Throws<LayeredFileException>(() => Read(ModelBuilder.File(layer)));
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
    }

    private static PartContent Read(LayerFile file)
    {
        using var reader = new ContentReader(file);
        return reader.Read(file.GetLayers().First(), withLook: false);
    }

    private static LayerFile Packed(int depth, Compression compression, SpoolFile spool, Action<PlaneRole, byte[]>? change = null)
    {
        var file = new LayerFile("figure.psd", FileFormat.Psd, 100, 60, ColorMode.Rgb, depth, new StubFileDetail());
        var layer = new Layer(LayerKind.Pixel, "Part", new StubLayerDetail()) { Bounds = Bounds.FromSize(3, 4, Width, Height) };
        for (var role = PlaneRole.Alpha; role <= PlaneRole.Color2; role++)
        {
            var samples = new byte[Width * Height * depth / 8];
            for (var i = 0; i < samples.Length; i += depth / 8) Write(samples.AsSpan(i), depth, (i + ((int)role * 31)) % 97 + 1);
            change?.Invoke(role, samples);
            layer.Planes.Add(PlanePacker.Pack(role, compression, Width, Height, depth, FileFormat.Psd, samples, spool));
        }

        file.Root.Append(layer);
        return file;
    }

    private static void Write(Span<byte> sample, int depth, int value)
    {
        if (depth == 8) sample[0] = (byte)value;
        else if (depth == 16) BinaryPrimitives.WriteUInt16BigEndian(sample, (ushort)(value * 300));
        else BinaryPrimitives.WriteSingleBigEndian(sample, value / 128f);
    }

    private static LayerFile Painted(Func<Painting, Painting> change, int shift = 0) =>
        ModelBuilder.File(change(Painting.Of("Part").Rectangle(10 + shift, 12, 20, 10, rgb: 0x336699).Ellipse(15 + shift, 15, 20, 18, alpha: 99)).ToLayer());

    private static LayerFile Masked(byte[]? samples, Bounds bounds, Action<LayerMask>? change = null)
    {
        var layer = ModelBuilder.Pixel("Part");
        if (samples is not null)
        {
            layer.Mask = new LayerMask { Bounds = bounds };
            layer.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, samples));
            change?.Invoke(layer.Mask);
        }

        return ModelBuilder.File(layer);
    }
}
