using LayerTools.Deliveries;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Core.Tests.Deliveries;

public class PartLookTests
{
    [Fact]
    public void A_shifted_part_has_the_same_look() => Assert.Equal(Look(Arm(0, 1)).ToString(), Look(Arm(17, 1)).ToString());

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void A_scaled_part_looks_nearly_the_same(int scale)
    {
        var (small, large) = (Look(Arm(0, 1)), Look(Arm(0, scale)));
        Assert.InRange(small.CompareHash(large), 0.9, 1);
        Assert.InRange(small.Compare(large), 0.9, 1);
    }

    [Fact]
    public void A_part_in_slightly_other_colours_looks_nearly_the_same()
    {
        var recoloured = Painting.Of("Arm").Rectangle(10, 10, 16, 60, rgb: 0xA87048).Ellipse(10, 60, 40, 20, rgb: 0x503020).ToLayer();
        Assert.InRange(Look(Arm(0, 1)).CompareHash(Look(recoloured)), 0.95, 1);
        Assert.InRange(Look(Arm(0, 1)).Compare(Look(recoloured)), 0.9, 0.999);
    }

    [Fact]
    public void Other_parts_look_otherwise()
    {
        var star = Painting.Of("Star").Rectangle(30, 10, 8, 60, rgb: 0xFFE080).Rectangle(5, 30, 60, 8, rgb: 0xFFE080).ToLayer();
        Assert.InRange(Look(Arm(0, 1)).CompareHash(Look(star)), 0, 0.5);
        Assert.InRange(Look(Arm(0, 1)).Compare(Look(star)), 0, 0.6);
    }

    [Fact]
    public void Is_read_from_its_hash()
    {
        var look = Look(Arm(0, 1));
        var read = PartLook.TryParse(look.ToString())!;
        Assert.Equal((look.ToString(), 1.0), (read.ToString(), read.Compare(look)));
        Assert.Null(PartLook.TryParse("0f"));
        Assert.Null(PartLook.TryParse(new string('g', 64)));
    }

    [Fact]
    public void Bits_say_which_blocks_are_at_least_as_bright_as_the_median()
    {
        // The left half is black and the right half white.
        var pixels = new byte[4 * 16 * 16];
        for (var block = 0; block < 256; block++) pixels.AsSpan(4 * block, 4).Fill(block % 16 < 8 ? (byte)0 : (byte)255);
        for (var block = 0; block < 256; block++) pixels[(4 * block) + 3] = 255;
        Assert.Equal(string.Concat(Enumerable.Repeat("ff00", 16)), PartLook.Create(new CoarsePicture(16, pixels)).ToString());
    }

    [Fact]
    public void A_coarse_picture_holds_the_means_of_its_blocks()
    {
        // Two blocks a side: opaque red, nothing, half of green, and half-transparent white.
        var layer = Painting.Of("Part").Within(new Bounds(0, 0, 8, 8)).Rectangle(0, 0, 4, 4, rgb: 0xFF0000).Rectangle(0, 4, 4, 2, rgb: 0x00FF00).Rectangle(4, 4, 4, 4, alpha: 128, rgb: 0xFFFFFF).ToLayer();
        using var reader = new ContentReader(ModelBuilder.File(layer));
        Assert.Equal<byte>([255, 0, 0, 255, 0, 0, 0, 0, 0, 128, 0, 128, 128, 128, 128, 128], reader.Paint(layer, layer.Bounds, 2).Pixels);
    }

    [Fact]
    public void Blocks_smaller_than_a_pixel_show_the_pixel_they_lie_in()
    {
        var layer = Painting.Of("Dot").Rectangle(5, 5, 1, 1, rgb: 0x102030).ToLayer();
        using var reader = new ContentReader(ModelBuilder.File(layer));
        Assert.Equal<byte>([0x10, 0x20, 0x30, 255, 0x10, 0x20, 0x30, 255, 0x10, 0x20, 0x30, 255, 0x10, 0x20, 0x30, 255], reader.Paint(layer, layer.Bounds, 2).Pixels);
    }

    private static Layer Arm(int shift, int scale) =>
        Painting.Of("Arm").Rectangle(10 + shift, 10, 16 * scale, 60 * scale, rgb: 0xA06840).Ellipse(10 + shift, 10 + (50 * scale), 40 * scale, 20 * scale, rgb: 0x402818).ToLayer();

    private static PartLook Look(Layer layer)
    {
        using var reader = new ContentReader(ModelBuilder.File(layer));
        return reader.Read(layer, withLook: true).Look!;
    }
}
