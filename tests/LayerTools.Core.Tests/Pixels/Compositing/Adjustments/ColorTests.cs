using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Adjustments;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Adjustments;

/// <summary>Adjustments that look at all three colours of a pixel, on colours worked out by hand.</summary>
public class ColorTests
{
    [Fact]
    public void Threshold_looks_at_luminosity()
    {
        // 0.3 · 200 + 0.59 · 50 + 0.11 · 100 = 100.5, which is level 101
        AssertColor(new Threshold(101), (200, 50, 100), (255, 255, 255));
        AssertColor(new Threshold(102), (200, 50, 100), (0, 0, 0));
    }

    [Fact]
    public void A_channel_mix_sums_parts()
    {
        var mix = new ChannelMix([new ChannelMixRow(0, 100, 0, 0), new ChannelMixRow(50, 0, 50, 0), new ChannelMixRow(-100, 0, 100, 40)]);
        AssertColor(mix, (100, 30, 50), (30, 75, 52));
    }

    [Fact]
    public void A_channel_mix_of_one_row_is_grey() => AssertColor(new ChannelMix([new ChannelMixRow(40, 40, 20, 0)]), (100, 50, 200), (100, 100, 100));

    [Fact]
    public void Hues_turn() => AssertColor(Shift(new HueShift(120, 0, 0)), (255, 0, 0), (0, 255, 0));

    [Fact]
    public void Saturation_goes_towards_grey_or_away() // HSL of (150, 100, 100): lightness 125/255, saturation 1/5
    {
        AssertColor(Shift(new HueShift(0, -100, 0)), (150, 100, 100), (125, 125, 125));
        AssertColor(Shift(new HueShift(0, -50, 0)), (150, 100, 100), (138, 113, 113));
        AssertColor(Shift(new HueShift(0, 50, 0)), (150, 100, 100), (175, 75, 75));
        AssertColor(Shift(new HueShift(0, 100, 0)), (150, 100, 100), (250, 0, 0));
    }

    [Fact]
    public void Lightness_goes_towards_white_or_black()
    {
        AssertColor(Shift(new HueShift(0, 0, 20)), (100, 50, 0), (131, 91, 51));
        AssertColor(Shift(new HueShift(0, 0, -20)), (100, 50, 0), (80, 40, 0));
    }

    [Fact]
    public void Colouring_gives_every_pixel_one_hue() =>
        // Lightness 100/255, saturation 1/2: 100 ± 50
        AssertColor(new HueSaturation(true, new HueShift(240, 50, 0), default, []), (120, 80, 90), (50, 50, 150));

    [Fact]
    public void A_range_shifts_its_own_hues_only_and_fades_at_its_ends()
    {
        // Hues around red: none at 315°, full from 345° over 0° to 15°, none at 45°.
        var reds = new HueSaturation(false, default, default, [new HueRange(315, 345, 15, 45, new HueShift(120, 0, 0))]);
        AssertColor(reds, (255, 0, 0), (0, 255, 0));
        AssertColor(reds, (0, 255, 0), (0, 255, 0));
        AssertColor(reds, (100, 100, 100), (100, 100, 100));
        // 30° is half way out: half of 120° on, which is 90°.
        AssertColor(reds, (200, 100, 0), (100, 200, 0));
    }

    [Fact]
    public void A_ranges_lightness_moves_channels_to_the_highest_or_lowest()
    {
        HueSaturation Reds(int lightness) => new(false, default, default, [new HueRange(315, 345, 15, 45, new HueShift(0, 0, lightness))]);
        AssertColor(Reds(50), (200, 100, 100), (200, 150, 150));
        AssertColor(Reds(-50), (200, 100, 100), (150, 100, 100));
    }

    [Fact]
    public void Balance_moves_tones_by_how_dark_they_are()
    {
        var balance = new ColorBalance(new RgbTriple(100, 0, 0), new RgbTriple(0, 100, 0), new RgbTriple(0, 0, -100), KeepsLuminosity: false);
        // A quarter of white · (1 − c)²; of 2 c (1 − c); of c²
        AssertColor(balance, (0, 0, 0), (64, 0, 0));
        AssertColor(balance, (51, 51, 51), (92, 71, 48));
        AssertColor(balance, (255, 255, 255), (255, 255, 191));
    }

    [Fact]
    public void Balance_can_keep_luminosity()
    {
        var (red, green, blue) = Change(new ColorBalance(default, new RgbTriple(80, 0, -40), default, KeepsLuminosity: true), (120, 110, 100));
        Assert.True(red > 120 && blue < 100);
        Assert.Equal((0.3 * 120) + (0.59 * 110) + (0.11 * 100), (0.3 * red) + (0.59 * green) + (0.11 * blue), 0.6);
    }

    [Fact]
    public void A_grey_mix_weighs_the_pure_and_the_mixed_part_of_a_colour()
    {
        // 50 grey, 50 yellow, 100 red
        var mix = new GreyMix([40, 60, 0, 0, 0, 0], Tint: null);
        AssertColor(mix, (200, 100, 50), (120, 120, 120));
        AssertColor(mix, (77, 77, 77), (77, 77, 77));
    }

    [Fact]
    public void A_tinted_grey_has_the_tints_hue_and_the_greys_luminosity()
    {
        var (red, green, blue) = Change(new GreyMix([0, 0, 0, 0, 0, 0], new RgbTriple(0.8, 0.7, 0.6)), (128, 128, 128));
        Assert.True(red > green && green > blue);
        Assert.Equal(128, (0.3 * red) + (0.59 * green) + (0.11 * blue), 0.6);
    }

    [Fact]
    public void A_gradient_gives_each_luminosity_its_colour()
    {
        var stops = new[] { new GradientMapStop(0, 0.5, new RgbTriple(0, 0, 1)), new GradientMapStop(0.6, 0.25, new RgbTriple(1, 0, 0)), new GradientMapStop(1, 0.5, new RgbTriple(1, 1, 1)) };
        AssertColor(new GradientMap(stops, IsReversed: false), (0, 0, 0), (0, 0, 255));
        AssertColor(new GradientMap(stops, IsReversed: false), (51, 51, 51), (85, 0, 170));
        // A quarter of the way from 0.6 to 1 is half of the change.
        AssertColor(new GradientMap(stops, IsReversed: false), (178.5f, 178.5f, 178.5f), (255, 128, 128));
        AssertColor(new GradientMap(stops, IsReversed: true), (0, 0, 0), (255, 255, 255));
    }

    [Fact]
    public void A_filter_multiplies_as_much_as_it_is_dense() =>
        AssertColor(new ColorFilter(new RgbTriple(1, 0.5, 0), 0.5, KeepsLuminosity: false), (200, 200, 200), (200, 150, 100));

    [Fact]
    public void Grey_files_take_what_works_on_one_channel()
    {
        Assert.True(ColorAdjusters.CanDraw(new Threshold(5), ColorMode.Grayscale));
        Assert.False(ColorAdjusters.CanDraw(new ChannelMix([]), ColorMode.Grayscale));
        Assert.False(ColorAdjusters.CanDraw(new Inversion(), ColorMode.Cmyk));
    }

    [Fact]
    public void A_run_of_one_colour_is_changed_throughout()
    {
        var row = new PixelRow(3, 0, 5);
        float[] reds = [1, 1, 0, 1, 1];
        reds.CopyTo(row.Colors[0], 0);
        ColorAdjusters.Create(new ChannelMix([new ChannelMixRow(0, 0, 0, 0), new ChannelMixRow(50, 0, 0, 0), new ChannelMixRow(0, 0, 0, 0)]), new AdjusterContext(ColorMode.Rgb, 8, LightCurve.Power)).Adjust(row, 5);

        Assert.Equal([0.5f, 0.5f, 0, 0.5f, 0.5f], row.Colors[1].Take(5));
        Assert.Equal([0f, 0, 0, 0, 0], row.Colors[0].Take(5));
    }

    private static HueSaturation Shift(HueShift master) => new(false, default, master, []);

    private static void AssertColor(Adjustment adjustment, (float Red, float Green, float Blue) before, (int Red, int Green, int Blue) after)
    {
        var (red, green, blue) = Change(adjustment, before);
        Assert.Equal(after, ((int)Math.Floor(red + 0.5), (int)Math.Floor(green + 0.5), (int)Math.Floor(blue + 0.5)));
    }

    private static (double Red, double Green, double Blue) Change(Adjustment adjustment, (float Red, float Green, float Blue) color)
    {
        var row = new PixelRow(3, 0, 1);
        (row.Colors[0][0], row.Colors[1][0], row.Colors[2][0]) = (color.Red / 255, color.Green / 255, color.Blue / 255);
        ColorAdjusters.Create(adjustment, new AdjusterContext(ColorMode.Rgb, 8, LightCurve.Power)).Adjust(row, 1);
        // A trace more, so that halves that floats miss are rounded as halves.
        return ((row.Colors[0][0] * 255) + 1e-4, (row.Colors[1][0] * 255) + 1e-4, (row.Colors[2][0] * 255) + 1e-4);
    }
}
