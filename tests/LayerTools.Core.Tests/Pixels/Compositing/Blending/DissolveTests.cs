using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing.Blending;

public class DissolveTests
{
    private static readonly Bounds Canvas = new(0, 0, 200, 100);

    [Theory]
    [InlineData(0)]
    [InlineData(51)]
    [InlineData(128)]
    [InlineData(255)]
    public void As_many_pixels_are_there_as_the_opacity_says_and_each_is_whole(int opacity)
    {
        var picture = Draw(opacity, 1);

        Assert.All(picture, grey => Assert.True(grey is 0 or 255));
        Assert.InRange(picture.Count(grey => grey == 0) / (double)picture.Length, (opacity / 255.0) - 0.015, (opacity / 255.0) + 0.015);
    }

    [Fact]
    public void The_noise_does_not_depend_on_threads_or_on_what_is_drawn()
    {
        var whole = Draw(128, 1);
        var part = RenderGrey(File(128), new CompositeOptions { Area = new Bounds(37, 41, 137, 91) });

        Assert.Equal(whole, Draw(128, 4));
        for (var i = 0; i < part.Length; i++) Assert.Equal(whole[((41 + (i / 100)) * 200) + 37 + (i % 100)], part[i]);
    }

    [Fact]
    public void Neighbours_are_independent()
    {
        var picture = Draw(128, 1);
        var alike = Enumerable.Range(0, picture.Length - 200).Count(i => picture[i] == picture[i + 200]);
        var alikeBeside = Enumerable.Range(0, picture.Length - 1).Count(i => picture[i] == picture[i + 1]);

        Assert.InRange(alike / (picture.Length - 200.0), 0.48, 0.52);
        Assert.InRange(alikeBeside / (picture.Length - 1.0), 0.48, 0.52);
    }

    private static int[] Draw(int opacity, int threads) => RenderGrey(File(opacity), new CompositeOptions { Threads = threads });

    private static LayerFile File(int opacity) =>
        Grey(200, 100, Even("Dust", Canvas, 0).With(layer => (layer.BlendMode, layer.OpacityByte) = (BlendMode.Dissolve, (byte)opacity)));
}
