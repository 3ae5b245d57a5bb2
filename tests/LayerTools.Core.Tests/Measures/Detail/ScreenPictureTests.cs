using LayerTools.Errors;
using LayerTools.Measures.Detail;
using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Measures.Detail;

public class ScreenPictureTests
{
    [Fact]
    public void Canvas_pixels_become_hard_squares_where_they_are_larger_than_those_of_the_screen()
    {
        var file = ModelBuilder.File("hero.psd", 20, 20, Painting.Of("Dot").Rectangle(4, 4, 2, 2, rgb: 0xFF0000).Rectangle(5, 4, 1, 1, rgb: 0x00FF00).ToLayer());

        var picture = ScreenPicture.Draw(file, new Bounds(4, 4, 6, 6), null, new ScreenSize("tiny", 8, 6), TestContext.Current.CancellationToken);

        // 3 screen px per canvas px, centred: one px of grey at both sides.
        Assert.Equal(["80", "FF0000", "FF0000", "FF0000", "FF00", "FF00", "FF00", "80"], Enumerable.Range(0, 8).Select(x => Show(picture.Row(2).Slice(4 * x, 4))));
        Assert.Equal("FF0000", Show(picture.Row(5).Slice(4 * 6, 4)));
    }

    [Fact]
    public void Where_they_are_smaller_each_screen_pixel_is_the_mean_of_what_it_covers()
    {
        var file = ModelBuilder.File("hero.psd", 40, 40, Painting.Of("Stripes").Rectangle(0, 0, 40, 40, rgb: 0xFF0000).Rectangle(0, 0, 2, 40, rgb: 0x0000FF).ToLayer());

        var picture = ScreenPicture.Draw(file, new Bounds(0, 0, 40, 40), null, new ScreenSize("tiny", 10, 10), TestContext.Current.CancellationToken);

        Assert.Equal("800080", Show(picture.Row(5).Slice(0, 4)));
        Assert.Equal("FF0000", Show(picture.Row(5).Slice(4, 4)));
    }

    [Fact]
    public void A_view_of_parts_that_lie_far_outside_of_the_canvas_is_refused_and_not_drawn_for_hours()
    {
        var file = ModelBuilder.File("hero.psd", 20, 20, Painting.Of("Dot").Rectangle(4, 4, 2, 2).ToLayer());

        var error = Assert.Throws<LayeredFileException>(() => ScreenPicture.Draw(file, new Bounds(-150_000, 0, 150_000, 4), null, new ScreenSize("tiny", 8, 6), TestContext.Current.CancellationToken));

        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
    }

    [Fact]
    public void A_chosen_part_is_shown_alone_and_sketches_never_with_the_figure()
    {
        var back = Painting.Of("Back").Rectangle(0, 0, 10, 10, rgb: 0x0000FF).ToLayer();
        var file = ModelBuilder.File("hero.psd", 10, 10, Painting.Of("Sketch").Rectangle(0, 0, 10, 10).ToLayer(), Painting.Of("Front").Rectangle(0, 0, 10, 10, rgb: 0x00FF00).ToLayer(), back);
        var screen = new ScreenSize("tiny", 10, 10);

        Assert.Equal("FF00", Show(ScreenPicture.Draw(file, new Bounds(0, 0, 10, 10), null, screen, TestContext.Current.CancellationToken).Row(5)));
        Assert.Equal("FF", Show(ScreenPicture.Draw(file, new Bounds(0, 0, 10, 10), back, screen, TestContext.Current.CancellationToken).Row(5)));
    }

    /// <summary>The colour as a number in hexadecimal; "80" alone is mid-grey.</summary>
    private static string Show(Span<byte> pixel)
    {
        Assert.Equal(255, pixel[3]);
        var number = (pixel[0] << 16) | (pixel[1] << 8) | pixel[2];
        return number == 0x808080 ? "80" : FormattableString.Invariant($"{number:X}");
    }
}
