using LayerTools.Checks;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Profiles;
using LayerTools.Tests.Measures.Detail;
using LayerTools.Tests.Support;
using SixLabors.ImageSharp.Processing;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class EnlargedArtTests : RuleTests
{
    private protected override LayerProfile Profile => new() { Name = "test", Rules = new Dictionary<string, RuleSetting> { ["EnlargedArt"] = new(Severity.Note, null) } };

    private protected override IReadOnlyList<string?> BadPaths => ["Coat"];

    private protected override LayerFile CreateGood() => ModelBuilder.File("hero.psd", 900, 900, ToLayer("Arm", DrawnPictures.Draw(300, 1)), ToLayer("Coat", DrawnPictures.Draw(400, 2)));

    private protected override LayerFile CreateBad() =>
        ModelBuilder.File("hero.psd", 900, 900, ToLayer("Arm", DrawnPictures.Draw(300, 1)), ToLayer("Coat", DrawnPictures.Enlarge(DrawnPictures.Draw(400, 2), 2, KnownResamplers.Bicubic)));

    [Fact]
    public void It_is_off_unless_a_profile_asks_for_it() => Assert.Empty(Check(CreateBad(), new LayerProfile { Name = "plain" }));

    [Fact]
    public void The_finding_says_how_much() => Assert.Equal("2.0 times", Assert.Single(Check(CreateBad())).Measured);

    private static Layer ToLayer(string name, Raster raster)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = new Bounds(0, 0, raster.Width, raster.Height) };
        for (var channel = 0; channel < 4; channel++)
        {
            var samples = Enumerable.Range(0, raster.Width * raster.Height).Select(i => raster.Pixels[(4 * i) + channel]).ToArray();
            layer.Planes.Add(ModelBuilder.Raw(channel == 3 ? PlaneRole.Alpha : (PlaneRole)channel, samples));
        }

        return layer;
    }
}
