using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Adjustments;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Adjustments;

/// <summary>Adjustments that change each channel alone, on levels worked out by hand.</summary>
public class ToneTests
{
    [Fact]
    public void Inversion_turns_light_to_dark() => AssertLevels(new Inversion(), (0, 255), (1, 254), (100, 155), (255, 0));

    [Fact]
    public void Levels_stretch_between_black_and_white_and_then_to_darkest_and_lightest() =>
        // (v − 51) / 102 of 255, then 20 + that · 200 / 255
        AssertLevels(Common(new LevelsRange(51, 153, 20, 220, 1)), (0, 20), (51, 20), (102, 120), (153, 220), (255, 220));

    [Fact]
    public void Levels_bend_middle_tones_by_gamma() =>
        // 255 · (64 / 255)^(1/2) = 127.75; below level 32 a parabola: slope (32/255)^(−1/2) = 2.823, 16 · 2.823 · (1.5 − 0.25) = 56.5
        AssertLevels(Common(new LevelsRange(0, 255, 0, 255, 2)), (0, 0), (16, 56), (64, 128), (255, 255));

    [Fact]
    public void Levels_darken_by_the_plain_power() => AssertLevels(Common(new LevelsRange(0, 255, 0, 255, 0.5)), (16, 1), (128, 64), (200, 157));

    [Fact]
    public void Levels_can_run_from_light_to_dark() => AssertLevels(Common(new LevelsRange(0, 255, 255, 0, 1)), (0, 255), (100, 155));

    [Fact]
    public void A_channels_own_levels_come_before_those_of_all()
    {
        var levels = new Levels([new LevelsRange(100, 255, 0, 255, 1), new LevelsRange(0, 255, 100, 255, 1)]);

        // 0 becomes 100 first, which then is black.
        AssertLevels(levels, (0, 0));
    }

    [Fact]
    public void A_curve_of_two_points_is_a_straight_line_and_level_outside() => AssertLevels(Curve((51, 100), (153, 202)), (0, 100), (51, 100), (60, 109), (153, 202), (255, 202));

    [Fact]
    public void A_curve_of_three_points_is_a_natural_spline() =>
        // h = 100, second derivative in the middle 6 (−0.5 − 1.5) / (2 · 200) = −0.03; at 50: 75 + 100²/6 · (0.125 − 0.5) · −0.03 = 93.75
        AssertLevels(Curve((0, 0), (100, 150), (200, 100)), (0, 0), (50, 94), (100, 150), (150, 144), (200, 100), (255, 100));

    [Fact]
    public void A_curve_of_levels_is_taken_as_it_is()
    {
        var map = Enumerable.Range(0, 256).Select(level => (byte)(level / 2)).ToArray();
        AssertLevels(new ToneCurves([new ToneCurve(0, [], map)]), (0, 0), (99, 49), (255, 127));
    }

    [Fact]
    public void Exposure_multiplies_light() =>
        // (100/255)^2.2 is 0.12753 of light; doubled it is level 255 · 0.25506^(1/2.2) = 137.04
        AssertLevels(new Exposure(1, 0, 1), (0, 0), (100, 137), (200, 255));

    [Fact]
    public void Exposure_adds_light_and_bends_it() =>
        // sqrt(0.12753 + 0.1) = 0.47700 is level 182.14
        AssertLevels(new Exposure(0, 0.1, 2), (100, 182));

    [Fact]
    public void Exposure_of_32_bit_goes_beyond_white()
    {
        var row = Row(1.5f);
        ColorAdjusters.Create(new Exposure(2, 0, 1), Context(32)).Adjust(row, 1);
        Assert.Equal(6f, row.Colors[0][0], 1e-5);
    }

    [Fact]
    public void Threshold_is_white_from_its_level_on() => AssertLevels(new Threshold(100), (0, 0), (99, 0), (100, 255), (255, 255));

    [Fact]
    public void Posterisation_has_equal_steps() => AssertLevels(new Posterization(4), (0, 0), (63, 0), (64, 85), (127, 85), (128, 170), (191, 170), (192, 255), (255, 255));

    [Fact]
    public void Straight_contrast_turns_around_the_middle_before_brightness_is_added() =>
        // (v − 127) · 0.74 + 127 − 23; levels in a real file with these settings: 3 → 12, 225 → 177
        AssertLevels(new BrightnessContrast(-23, -26, 127, IsStraight: true), (3, 12), (127, 104), (225, 177));

    [Fact]
    public void Bent_contrast_is_two_parabolas() =>
        // x − 0.75 · 0.4 · x (1 − 2x) at x = 51/255: 0.2 − 0.036; and its mirror image
        AssertLevels(new BrightnessContrast(0, 40, 127, IsStraight: false), (0, 0), (51, 42), (204, 213), (255, 255));

    [Fact]
    public void Bent_brightness_is_a_line_from_black_and_reaches_white_without_clipping() =>
        // e^(0.0063 · 100) = 1.8776
        AssertLevels(new BrightnessContrast(100, 0, 127, IsStraight: false), (0, 0), (20, 38), (60, 113), (255, 255));

    [Theory]
    [InlineData(10)]
    [InlineData(75)]
    [InlineData(150)]
    public void Bent_brightness_and_darkness_undo_each_other_and_never_fall(int brightness)
    {
        var lighten = new BrightnessTone(new BrightnessContrast(brightness, 0, 127, IsStraight: false));
        var darken = new BrightnessTone(new BrightnessContrast(-brightness, 0, 127, IsStraight: false));
        for (var level = 0; level < 255; level++)
        {
            Assert.Equal(level / 255.0, darken.Find(lighten.Find(level / 255.0)), 1e-6);
            Assert.True(lighten.Find((level + 1) / 255.0) > lighten.Find(level / 255.0));
        }
    }

    [Fact]
    public void In_16_bit_levels_between_those_of_8_bit_count()
    {
        var row = Row(1000f / 65535, 40000f / 65535);
        ColorAdjusters.Create(Common(new LevelsRange(0, 255, 0, 51, 1)), Context(16)).Adjust(row, 2);
        Assert.Equal([200f / 65535, 8000f / 65535], row.Colors[0].Take(2));
    }

    [Fact]
    public void In_32_bit_levels_are_those_of_the_encoded_light()
    {
        // Light 0.21586 is level 128 of sRGB, inverted 127, which is light 0.21223.
        var row = Row(0.21586f);
        ColorAdjusters.Create(new Inversion(), Context(32)).Adjust(row, 1);
        Assert.Equal(0.21223f, row.Colors[0][0], 1e-4);
    }

    private static Levels Common(LevelsRange range) => new([range]);

    private static ToneCurves Curve(params (int Input, int Output)[] points) => new([new ToneCurve(0, points, Map: null)]);

    private static AdjusterContext Context(int bitDepth) => new(ColorMode.Grayscale, bitDepth, LightCurve.Power);

    private static PixelRow Row(params float[] values)
    {
        var row = new PixelRow(1, 0, values.Length);
        values.CopyTo(row.Colors[0], 0);
        return row;
    }

    private static void AssertLevels(Adjustment adjustment, params (int Before, int After)[] levels)
    {
        var row = Row([.. levels.Select(level => level.Before / 255f)]);
        ColorAdjusters.Create(adjustment, Context(8)).Adjust(row, levels.Length);
        Assert.Equal(levels.Select(level => level.After), row.Colors[0].Take(levels.Length).Select(value => (int)Math.Round(value * 255)));
    }
}
