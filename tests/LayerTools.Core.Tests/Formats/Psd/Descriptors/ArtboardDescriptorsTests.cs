using System.Buffers.Binary;
using System.Text;
using LayerTools.Formats.Psd;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;
using LayerTools.Model.Fills;
using Xunit;

namespace LayerTools.Tests.Formats.Psd.Descriptors;

/// <summary>Blocks made by hand after the published format specification, 'Descriptor structure'.</summary>
public class ArtboardDescriptorsTests
{
    [Theory]
    [InlineData(null, 1f)]
    [InlineData(1, 1f)]
    [InlineData(2, 0f)]
    [InlineData(3, null)]
    public void A_sheet_has_its_place_and_its_colour(int? type, float? grey)
    {
        var board = Read(Write(10, -20, 300, 400, type));

        Assert.Equal(new Artboard(new Bounds(10, -20, 300, 400), grey is { } value ? new FillColor(value, value, value) : null), board);
    }

    [Fact]
    public void A_sheet_moves_and_is_reflected_with_the_canvas()
    {
        var detail = new PsdLayerDetail(new PsdRecord { Blocks = [new PsdBlock("artb", Write(10, 20, 300, 400, 3))] }, null);

        detail.Recanvas(5, -7, 500, 500, 600, 600);
        Assert.Equal(new Bounds(15, 13, 305, 393), detail.Artboard!.Bounds);

        detail.Reflect(601, 600);
        Assert.Equal(new Bounds(296, 13, 586, 393), detail.Artboard!.Bounds);
    }

    [Fact]
    public void Bytes_that_are_no_sheet_stay_as_they_are()
    {
        byte[] data = [.. "artboardRect and not much else"u8];

        Assert.Equal(data, ArtboardDescriptors.Map(data, _ => new Bounds(1, 2, 3, 4)));
        Assert.Null(Read(data));
        Assert.Null(Read([]));
        Assert.Null(Read(Write(double.NaN, 0, 1, 1, 1)));
        Assert.Null(Read(Write(0, 0, 1e300, 1, 1)));
    }

    private static Artboard? Read(byte[] data) => ArtboardDescriptors.Read(new PsdRecord { Blocks = [new PsdBlock("artb", data)] });

    /// <summary>version 4; then a descriptor: name 4 + 2, class 4 + n, count 4, and for each item key 4 + n, type 4 and value.</summary>
    private static byte[] Write(double left, double top, double right, double bottom, int? type)
    {
        List<byte> data = [.. Int(16), .. Int(1), 0, 0, .. Key("null"), .. Int(type is null ? 1 : 2), .. Key("artboardRect"), .. "Objc"u8, .. Int(1), 0, 0, .. Key("classFloatRect"), .. Int(4)];
        foreach (var (key, value) in new[] { ("Top ", top), ("Left", left), ("Btom", bottom), ("Rght", right) }) data.AddRange([.. Key(key), .. "doub"u8, .. Double(value)]);
        if (type is { } number) data.AddRange([.. Key("artboardBackgroundType"), .. "long"u8, .. Int(number)]);
        return [.. data];
    }

    /// <summary>Keys of four characters are written with the length 0.</summary>
    private static byte[] Key(string key) => [.. Int(key.Length == 4 ? 0 : key.Length), .. Encoding.ASCII.GetBytes(key)];

    private static byte[] Int(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }

    private static byte[] Double(double value)
    {
        var bytes = new byte[8];
        BinaryPrimitives.WriteDoubleBigEndian(bytes, value);
        return bytes;
    }
}
