using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Formats.Psd.Blocks.Adjustments;
using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd.Blocks.Adjustments;

/// <summary>Adjustments from bytes written by hand after the published layouts; those of the descriptors are built here too.</summary>
public class AdjustmentBlocksTests
{
    private const string Range = "0000 00FF 0000 00FF 0064";
    private const string Curves = "00 0001 00000003 0002 0000 0000 00FF 00C8 0001 0010 0020 43727620 0004";

    private static readonly Dictionary<string, string> Blocks = new(StringComparer.Ordinal)
    {
        ["nvrt"] = "",
        ["brit"] = "FFE9 FFE6 007F 00 00",
        ["levl"] = "0002 0027 00D9 0019 00FF 0098 " + string.Join(" ", Enumerable.Repeat(Range, 28)),
        ["curv"] = Curves,
        ["expA"] = "0001 3FA00000 BD4CCCCD 3FC00000 0000",
        ["hue2"] = "0002 01 00 0078 0019 FFFB 000A FFF6 0005 013B 0159 000F 002D 001E 0000 0000 " + string.Join(" ", Enumerable.Repeat("000F 002D 004B 0069 0000 0000 0000", 5)),
        ["blnc"] = "FFFC 0002 FFFB 000A 0004 FFF7 0001 FFF7 FFFD 01 00",
        ["thrs"] = "0080 0000",
        ["post"] = "0004 0000",
        ["grdm"] = "0001 01 00 00000001 0041 0002 00000000 00000032 0000 FFFF 0000 0000 0000 0000 00001000 00000019 0008 2710 0000 0000 0000 0000 0000",
        ["mixr"] = "0001 0000 0064 0000 0000 0000 0005 0000 0064 0000 0000 0000 0000 0000 0064 0000 FFFB 0000 0000 0000 0000 0064",
        ["phfl"] = "0002 0000 FFFF 8000 0000 0000 00000019 01 000000",
    };

    /// <summary>Blocks that are known to be adjustments but not read.</summary>
    private static readonly string[] Unread = ["vibA", "selc", "clrL", "hue "];

    [Fact]
    public void Every_adjustment_in_files_of_other_programs_is_read()
    {
        var kinds = new HashSet<string>(StringComparer.Ordinal);
        foreach (var layer in SharedFiles.All.Select(TryRead).OfType<LayerFile>().SelectMany(file => file.GetLayers()).Where(layer => layer.Kind == LayerKind.Adjustment))
        {
            var record = ((PsdLayerDetail)layer.Detail).Record;
            var adjustment = layer.Detail.Adjustment;
            Assert.True(adjustment is not null || record.Has(Unread), $"{layer.FilePath}: {layer.LayerPath}");
            if (adjustment is not null) kinds.Add(adjustment.Words);
        }

        // Without the real files only the fixtures' own are seen.
        Assert.InRange(kinds.Count, SharedFiles.FindLayered("corpus").Count == 0 ? 5 : 13, int.MaxValue);
    }

    [Fact]
    public void Small_blocks_are_read()
    {
        Assert.IsType<Inversion>(Read("nvrt"));
        Assert.Equal(new BrightnessContrast(-23, -26, 127, IsStraight: true), Read("brit"));
        Assert.Equal(new Threshold(128), Read("thrs"));
        Assert.Equal(new Posterization(4), Read("post"));
        Assert.Equal(new Exposure(1.25, -0.05f, 1.5), Read("expA"));
        Assert.Equal(new ColorBalance(new RgbTriple(-4, 2, -5), new RgbTriple(10, 4, -9), new RgbTriple(1, -9, -3), KeepsLuminosity: true), Read("blnc"));
    }

    [Fact]
    public void Levels_are_read()
    {
        var levels = Assert.IsType<Levels>(Read("levl"));
        Assert.Equal(new LevelsRange(39, 217, 25, 255, 1.52), levels.Channels[0]);
        Assert.Equal(LevelsRange.Unchanged, levels.Channels[3]);
    }

    [Fact]
    public void Curves_are_read_output_before_input()
    {
        var curves = Assert.IsType<ToneCurves>(Read("curv")).Curves;
        Assert.Equal([0, 1], curves.Select(curve => curve.Channel));
        Assert.Equal([(0, 0), (200, 255)], curves[0].Points);
        Assert.Equal([(32, 16)], curves[1].Points);
    }

    [Fact]
    public void A_curve_of_levels_is_read()
    {
        var map = Enumerable.Range(0, 256).Select(level => (byte)(255 - level)).ToArray();
        var curve = Assert.Single(Assert.IsType<ToneCurves>(Read("curv", [1, 0, 1, 0, 0, 0, 4, .. map])).Curves);
        Assert.Equal(2, curve.Channel);
        Assert.Equal(map, curve.Map);
    }

    [Fact]
    public void Hue_and_saturation_are_read_with_the_ranges_that_change_something()
    {
        var hue = Assert.IsType<HueSaturation>(Read("hue2"));
        Assert.True(hue.Colorizes);
        Assert.Equal(new HueShift(120, 25, -5), hue.Colorization);
        Assert.Equal(new HueShift(10, -10, 5), hue.Master);
        Assert.Equal(new HueRange(315, 345, 15, 45, new HueShift(30, 0, 0)), Assert.Single(hue.Ranges));
    }

    [Fact]
    public void Gradients_are_read_with_colours_of_several_kinds()
    {
        var map = Assert.IsType<GradientMap>(Read("grdm"));
        Assert.True(map.IsReversed);
        Assert.Equal([new GradientMapStop(0, 0.5, new RgbTriple(1, 0, 0)), new GradientMapStop(1, 0.25, new RgbTriple(1, 1, 1))], map.Stops);
    }

    [Fact]
    public void Channel_mixes_are_read()
    {
        Assert.Equal([new ChannelMixRow(100, 0, 0, 5), new ChannelMixRow(0, 100, 0, 0), new ChannelMixRow(0, 0, 100, -5)], Assert.IsType<ChannelMix>(Read("mixr")).Rows);
        var bytes = Bytes("mixr");
        bytes[3] = 1;
        Assert.Single(Assert.IsType<ChannelMix>(Read("mixr", bytes)).Rows);
    }

    [Fact]
    public void Filters_are_read_in_both_versions()
    {
        Assert.Equal(new ColorFilter(new RgbTriple(1, 0x8000 / 65535.0, 0), 0.25, KeepsLuminosity: true), Read("phfl"));
        // XYZ of the white of D50 as 16.16: 0.9642, 1, 0.8249
        var filter = Assert.IsType<ColorFilter>(Read("phfl", Convert.FromHexString("0003" + "0000F6D6" + "00010000" + "0000D32D" + "00000032" + "00")));
        Assert.InRange(filter.Color.Red, 0.995, 1);
        Assert.InRange(filter.Color.Blue, 0.995, 1);
        Assert.Equal((0.5, false), (filter.Density, filter.KeepsLuminosity));
    }

    [Fact]
    public void A_descriptor_says_anew_what_the_older_block_says()
    {
        var record = new PsdRecord { Blocks = [new PsdBlock("brit", Bytes("brit")), new PsdBlock("CgEd", Descriptor(("Brgh", -95), ("Cntr", -50), ("means", 120)))] };
        Assert.Equal(new BrightnessContrast(-95, -50, 120, IsStraight: false), AdjustmentBlocks.Read(record));
    }

    [Fact]
    public void A_mix_to_grey_is_read()
    {
        var mix = Assert.IsType<GreyMix>(Read("blwh", Descriptor(("Rd  ", 40), ("Yllw", 60), ("Grn ", 41), ("Cyn ", 61), ("Bl  ", 20), ("Mgnt", 80))));
        Assert.Equal([40, 60, 41, 61, 20, 80], mix.Weights);
        Assert.Null(mix.Tint);
        Assert.Null(Read("blwh", Descriptor(("Rd  ", 40))));
    }

    [Fact]
    public void Blocks_that_end_anywhere_are_nothing_or_still_whole()
    {
        foreach (var (key, _) in Blocks)
        {
            var bytes = Bytes(key);
            for (var length = 0; length < bytes.Length; length++)
            {
                // What is cut off may be filling; whatever comes out must be a sound adjustment or nothing.
                if (Read(key, bytes[..length]) is { } read) Assert.NotEmpty(read.Words);
            }
        }

        Assert.Null(Read("levl", Bytes("levl")[..9]));
        Assert.Null(Read("hue2", Bytes("hue2")[..50]));
    }

    [Theory]
    [InlineData("levl", "0002 00FF 00FF 0000 00FF 0064")]
    [InlineData("levl", "0002 0000 00FF 0000 00FF 0000")]
    [InlineData("curv", "00 0001 00000001 0002 0000 0050 00FF 0050")]
    [InlineData("curv", "00 0001 00000001 FFFF")]
    [InlineData("curv", "07 0001 00000001 0000")]
    [InlineData("curv", "00 0004 00000001 0000")]
    [InlineData("expA", "0001 7F800000 00000000 3F800000")]
    [InlineData("expA", "0001 3F800000 00000000 00000000")]
    [InlineData("post", "0001")]
    [InlineData("grdm", "0001 0000 7FFFFFFF")]
    [InlineData("grdm", "0001 0000 00000000 0000")]
    [InlineData("phfl", "0009 0000")]
    public void Impossible_numbers_are_nothing(string key, string hex) => Assert.Null(Read(key, Hex(hex)));

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

    private static Adjustment? Read(string key) => Read(key, Bytes(key));

    private static Adjustment? Read(string key, byte[] data) => AdjustmentBlocks.Read(new PsdRecord { Blocks = [new PsdBlock(key, data)] });

    private static byte[] Bytes(string key) => Hex(Blocks[key]);

    private static byte[] Hex(string hex) => Convert.FromHexString(hex.Replace(" ", "", StringComparison.Ordinal));

    /// <summary>A descriptor of whole numbers: version 16, empty name, class 'null', then key, type 'long' and value for each.</summary>
    private static byte[] Descriptor(params (string Key, int Value)[] items)
    {
        var output = new PsdOutput();
        output.WriteInt32(16);
        output.WriteInt32(1);
        output.WriteUInt16(0);
        WriteKey(output, "null");
        output.WriteInt32(items.Length);
        foreach (var (key, value) in items)
        {
            WriteKey(output, key);
            output.Write("long"u8);
            output.WriteInt32(value);
        }

        return output.ToArray();
    }

    private static void WriteKey(PsdOutput output, string key)
    {
        output.WriteInt32(key.Length == 4 ? 0 : key.Length);
        output.Write(System.Text.Encoding.ASCII.GetBytes(key));
    }
}
