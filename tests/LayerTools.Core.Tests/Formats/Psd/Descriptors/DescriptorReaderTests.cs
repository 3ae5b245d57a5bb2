using System.Buffers.Binary;
using System.Text;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd.Descriptors;

/// <summary>Descriptors by bytes worked out from the PSD File Formats Specification, 'Descriptor structure', and in real files.</summary>
public sealed class DescriptorReaderTests
{
    /// <summary>Blocks that hold a descriptor, and where its version stands.</summary>
    private static readonly Dictionary<string, int> Places = new()
    {
        ["SoCo"] = 0, ["GdFl"] = 0, ["PtFl"] = 0, ["vstk"] = 0, ["CgEd"] = 0, ["blwh"] = 0, ["vibA"] = 0, ["lfx2"] = 4, ["lmfx"] = 4, ["vscg"] = 4, ["vogk"] = 4, ["SoLd"] = 8,
    };

    [Fact]
    public void Every_type_of_value_is_read()
    {
        var descriptor = Read(
            Item("Flag", "bool", [1]),
            Item("Cnt ", "long", Number(-7)),
            Item("Big ", "comp", [0, 0, 0, 1, 0, 0, 0, 2]),
            Item("Rate", "doub", Number(2.5)),
            Item("Angl", "UntF", [.. Ascii("#Ang"), .. Number(90.0)]),
            Item("Locs", "UnFl", [.. Ascii("#Pxl"), .. Number(2), .. Number(1.0), .. Number(3.0)]),
            Item("Nm  ", "TEXT", Text("Arm\0")),
            Item("Md  ", "enum", [.. Key("BlnM"), .. Key("linearBurn")]),
            Item("Raw ", "tdta", [.. Number(2), 8, 9]),
            Item("Cls ", "type", [.. Text("x"), .. Key("Grdn")]),
            Item("Ref ", "obj ", [.. Number(1), .. Ascii("Enmr"), .. Text(""), .. Key("Lyr "), .. Key("Ordn"), .. Key("Trgt")]),
            Item("List", "VlLs", [.. Number(2), .. Ascii("long"), .. Number(4), .. Ascii("bool"), 0]),
            Item("longerKey", "Objc", Body("Grsc", Item("Gry ", "doub", Number(12.5)))));

        Assert.True(descriptor.IsComplete);
        Assert.Equal("null", descriptor.ClassId);
        Assert.Equal([true, -7, 0x1_0000_0002L, 2.5, new DescriptorMeasure("#Ang", 90)], descriptor.Items.Take(5).Select(item => item.Value));
        Assert.Equal([1.0, 3.0], ((DescriptorMeasures)descriptor.Find("Locs")!).Values);
        Assert.Equal("Arm", descriptor.GetText("Nm  "));
        Assert.Equal("linearBurn", descriptor.GetEnum("Md  "));
        Assert.Equal([8, 9], (byte[])descriptor.Find("Raw ")!);
        Assert.Equal(new DescriptorClass("x", "Grdn"), descriptor.Find("Cls "));
        Assert.Equal([new DescriptorReference("Enmr", "Lyr ", new DescriptorEnum("Ordn", "Trgt"))], descriptor.GetList("Ref "));
        Assert.Equal([4, false], descriptor.GetList("List"));
        Assert.Equal(12.5, descriptor.GetDescriptor("longerKey")!.GetNumber("Gry "));
    }

    [Fact]
    public void A_type_that_is_not_known_ends_the_descriptor_and_keeps_the_bytes()
    {
        var descriptor = Read(Item("Cnt ", "long", Number(3)), Item("Odd ", "zzzz", [1, 2, 3]), Item("Lost", "long", Number(4)));

        Assert.False(descriptor.IsComplete);
        Assert.Equal(3.0, descriptor.GetNumber("Cnt "));
        Assert.False(descriptor.Has("Lost"));
        Assert.Equal([1, 2, 3, .. Item("Lost", "long", Number(4))], descriptor.Rest!);
    }

    [Theory]
    [InlineData(64, null)]
    [InlineData(65, LayeredFileErrorKind.LimitExceeded)]
    public void Nesting_has_a_limit(int depth, LayeredFileErrorKind? expected)
    {
        var body = Body("null");
        for (var i = 1; i < depth; i++) body = Body("null", Item("Deep", "Objc", body));
        var error = Record.Exception(object? () => DescriptorReader.ReadVersioned([.. Number(16), .. body], 0, "block 'SoCo'"));

        Assert.Equal(expected, (error as LayeredFileException)?.Kind);
    }

    [Theory]
    [InlineData("descriptor.psd", LayeredFileErrorKind.Damaged)]
    [InlineData("descriptor-deep.psd", LayeredFileErrorKind.LimitExceeded)]
    public void Damage_is_told_when_the_content_is_wanted(string name, LayeredFileErrorKind kind)
    {
        var file = LayerFiles.Read(SharedFiles.Damaged.Single(path => Path.GetFileName(path) == name));
        var data = FindDescriptors(file).Single();

        Assert.Equal(kind, Assert.Throws<LayeredFileException>(() => DescriptorReader.ReadVersioned(data.Bytes, data.Position, "block 'SoCo'")).Kind);
    }

    [Theory]
    [InlineData("descriptor.psd")]
    [InlineData("descriptor-deep.psd")]
    public void A_fill_that_cannot_be_read_is_listed_as_not_drawn(string name)
    {
        var file = LayerFiles.Read(SharedFiles.Damaged.Single(path => Path.GetFileName(path) == name));

        Assert.StartsWith("fill that cannot be read (block 'SoCo': ", Assert.IsType<UndrawnFill>(file.GetLayers().Single(layer => layer.Detail.Fill is not null).Detail.Fill).Reason);
    }

    [Fact]
    public void Effects_are_read_from_both_kinds_of_blocks()
    {
        var old = Fixture("effects-lrfx.psd").GetLayers().SelectMany(layer => layer.Detail.GetEffects(layer.GetFile()!.Detail)).ToList();
        var newer = Fixture("ag-effects.psd").GetLayers().SelectMany(layer => layer.Detail.GetEffects(layer.GetFile()!.Detail)).ToList();

        Assert.IsType<ColorFill>(Assert.IsType<FillEffect>(Assert.Single(old)).Fill);
        Assert.NotEmpty(newer);
        Assert.DoesNotContain(newer, effect => effect is UndrawnEffect { Reason: var reason } && reason.Contains("cannot be read"));
    }

    [Fact]
    public void Descriptors_of_all_files_are_understood_to_their_end()
    {
        var read = 0;
        foreach (var (bytes, position) in SharedFiles.All.Select(TryRead).OfType<LayerFile>().SelectMany(FindDescriptors))
        {
            Assert.True(DescriptorReader.ReadVersioned(bytes, position, "block").IsComplete);
            read++;
        }

        Assert.InRange(read, 5, int.MaxValue);
    }

    [Fact]
    public void Random_damage_never_escapes_as_another_exception()
    {
        var random = new Random(20240607);
        foreach (var (bytes, position) in SharedFiles.Fixtures.Select(path => LayerFiles.Read(path)).SelectMany(FindDescriptors))
        {
            for (var round = 0; round < 300; round++)
            {
                var damaged = bytes.AsSpan(0, random.Next(bytes.Length + 1)).ToArray();
                for (var change = random.Next(4); change > 0 && damaged.Length > 0; change--) damaged[random.Next(damaged.Length)] = (byte)random.Next(256);
                var error = Record.Exception(object? () => DescriptorReader.ReadVersioned(damaged, position, "block"));
                Assert.True(error is null or LayeredFileException, error?.ToString());
            }
        }
    }

    /// <summary>One of the real files ends before its merged picture does.</summary>
    private static LayerFile? TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayeredFileException)
        {
            return null;
        }
    }

    private static LayerFile Fixture(string name) => LayerFiles.Read(SharedFiles.Fixtures.Single(path => Path.GetFileName(path) == name));

    private static IEnumerable<(byte[] Bytes, int Position)> FindDescriptors(LayerFile file) =>
        from layer in file.GetLayers()
        from block in ((PsdLayerDetail)layer.Detail).Record.Blocks
        where Places.ContainsKey(PsdKey.Format(block.Key)) && block.Data is MemoryBytes { Length: > 0 }
        select (((MemoryBytes)block.Data).Bytes, Places[PsdKey.Format(block.Key)]);

    private static Descriptor Read(params byte[][] items) => DescriptorReader.ReadVersioned([.. Number(16), .. Body("null", items)], 0, "block");

    private static byte[] Body(string classId, params byte[][] items) => [.. Text(""), .. Key(classId), .. Number(items.Length), .. items.SelectMany(item => item)];

    private static byte[] Item(string key, string type, byte[] value) => [.. Key(key), .. Ascii(type), .. value];

    private static byte[] Key(string key) => [.. Number(key.Length == 4 ? 0 : key.Length), .. Ascii(key)];

    private static byte[] Text(string text) => [.. Number(text.Length), .. Encoding.BigEndianUnicode.GetBytes(text)];

    private static byte[] Ascii(string text) => Encoding.ASCII.GetBytes(text);

    private static byte[] Number(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }

    private static byte[] Number(double value)
    {
        var bytes = new byte[8];
        BinaryPrimitives.WriteDoubleBigEndian(bytes, value);
        return bytes;
    }
}
