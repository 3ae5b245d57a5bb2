using LayerTools.Formats.Psd;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>Bytes made by hand after the published format specification.</summary>
public class BlendingRecordTests
{
    private static readonly byte[] Everything = [0, 0, 255, 255, 0, 0, 255, 255];

    [Fact]
    public void Plain_records_have_no_rules() =>
        Assert.Same(BlendingRules.None, BlendingRecord.Read(new PsdRecord { BlendingRanges = [.. Everything, .. Everything], Blocks = [new PsdBlock("knko", [0, 0, 0, 0])] }));

    [Fact]
    public void Ranges_come_for_grey_and_then_for_each_channel_layer_before_backdrop()
    {
        var rules = BlendingRecord.Read(new PsdRecord { BlendingRanges = [10, 20, 200, 210, 0, 0, 255, 255, .. Everything, 0, 0, 255, 255, 1, 2, 3, 4, 9, 9] });

        Assert.Equal(
            [
                new BlendingRange(null, new BrightnessLimits(10, 20, 200, 210), BrightnessLimits.All),
                new BlendingRange(1, BrightnessLimits.All, new BrightnessLimits(1, 2, 3, 4)),
            ],
            rules.Ranges);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    public void Knockout_is_the_first_byte(byte stored, int expected) =>
        Assert.Equal((Knockout)expected, BlendingRecord.Read(new PsdRecord { Blocks = [new PsdBlock("knko", [stored, 0, 0, 0])] }).Knockout);

    [Fact]
    public void Excluded_channels_are_numbers_of_four_bytes() =>
        Assert.Equal([2, 0], BlendingRecord.Read(new PsdRecord { Blocks = [new PsdBlock("brst", [0, 0, 0, 2, 0, 0, 0, 0, 7])] }).ExcludedChannels);
}
