using System.Globalization;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class SetLayerEditTests
{
    [Fact]
    public void Only_what_differs_is_set_and_recorded()
    {
        var file = File(Pixel("A"), Pixel("B", mark: Mark.Green));

        new SetLayerEdit { Mark = Mark.Green, Visible = false }.Plan(file, file.GetChildren()).Apply();

        Assert.Equal(["A: Mark 'None' -> 'Green'", "A: Visible 'True' -> 'False'", "B: Visible 'True' -> 'False'"], file.Changes.Select(change => change.ToString()));
        Assert.All(file.GetLayers(), layer => Assert.Equal((Mark.Green, false, 100.0), (layer.Mark, layer.Visible, layer.Opacity)));
        Assert.True(file.IsPictureStale);
    }

    [Fact]
    public void A_mark_leaves_the_picture_alone()
    {
        var file = File(Pixel("A"));

        new SetLayerEdit { Mark = Mark.Red }.Plan(file, file.GetChildren()).Apply();

        Assert.False(file.IsPictureStale);
        Assert.Equal(1, file.PendingCount);
    }

    [Fact]
    public void A_number_without_a_name_is_a_mark_as_well()
    {
        var file = File(Pixel("A", mark: (Mark)11));

        new SetLayerEdit { Mark = Mark.None }.Plan(file, file.GetChildren()).Apply();

        Assert.Equal(("11", "None"), (file.Changes[0].Old, file.Changes[0].New));
    }

    [Theory]
    [InlineData(0, 0, "0")]
    [InlineData(50, 128, "50.2")]
    [InlineData(99.9, 255, null)]
    [InlineData(33.3, 85, "33.3")]
    [InlineData(100, 255, null)]
    public void Opacity_is_kept_in_steps_of_a_255th(double percent, byte stored, string? recorded)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            var file = File(Pixel("A"));
            new SetLayerEdit { Opacity = percent }.Plan(file, file.GetChildren()).Apply();
            Assert.Equal(stored, file.GetChildren()[0].OpacityByte);
            Assert.Equal(recorded, file.Changes.SingleOrDefault()?.New);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(100.1)]
    [InlineData(double.NaN)]
    public void Opacity_has_a_range(double percent) => Assert.Throws<ArgumentOutOfRangeException>(() => new SetLayerEdit { Opacity = percent });

    [Fact]
    public void A_layer_of_another_file_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => new SetLayerEdit { Visible = false }.Plan(File(Pixel("A")), File(Pixel("B")).GetChildren()));
}
