using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class NameOffProfileTests : RuleTests
{
    private protected override LayerProfile Profile => LayerProfiles.Default;

    private protected override IReadOnlyList<string?> BadPaths => ["FACE", "FACE/eye_L"];

    private protected override LayerFile CreateGood() => ModelBuilder.File(ModelBuilder.Group("Face", ModelBuilder.Pixel("Eye L"), ModelBuilder.Pixel("Qwfp 7"), ModelBuilder.Pixel("Mouth ")), ModelBuilder.Pixel("sketch"));

    private protected override LayerFile CreateBad() => ModelBuilder.File(ModelBuilder.Group("FACE", ModelBuilder.Pixel("eye_L"), ModelBuilder.Pixel("Qwfp 7")));

    [Fact]
    public void It_says_the_name_and_how_it_should_be_written()
    {
        var finding = Check(CreateBad())[1];

        Assert.Equal(("eye_L", "Eye L"), (finding.Measured, finding.Limit));
    }
}
