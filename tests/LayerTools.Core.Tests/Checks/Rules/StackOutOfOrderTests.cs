using LayerTools.Edits;
using LayerTools.Profiles;
using LayerTools.Tests.Edits;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class StackOutOfOrderTests : RuleTests
{
    private protected override LayerProfile Profile => OrderEditTests.Profile;

    private protected override IReadOnlyList<string?> BadPaths => ["Back hair", "Body/Torso"];

    private protected override LayerFile CreateGood() => File(Pixel("Mystery"), Pixel("Face R"), Pixel("Face L"), Pixel("Neck"), Pixel("Torso"));

    private protected override LayerFile CreateBad() => File(Pixel("Back hair"), Pixel("Face"), Pixel("Neck"), Group("Body", Pixel("Torso"), Pixel("Face"), Pixel("Neck")));

    [Fact]
    public void What_is_found_is_what_would_move()
    {
        var file = CreateBad();
        var finding = Check(file)[0];
        Assert.Equal(("place 1", "place 3"), (finding.Measured, finding.Limit));
        Assert.Contains("behind 'Neck'", finding.Message, StringComparison.Ordinal);
        Assert.Contains("| Set-LayerOrder -Profile 'test' |", finding.Remedy, StringComparison.Ordinal);

        new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]).Apply();

        Assert.Empty(Check(file));
    }
}
