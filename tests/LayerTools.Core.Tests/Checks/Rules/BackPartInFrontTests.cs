using LayerTools.Checks;
using LayerTools.Checks.Rules;
using LayerTools.Profiles;
using LayerTools.Tests.Edits;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class BackPartInFrontTests : RuleTests
{
    private protected override LayerProfile Profile => OrderEditTests.Profile;

    private protected override IReadOnlyList<string?> BadPaths => ["Hair/Back hair"];

    private protected override LayerFile CreateGood() => File(Group("Hair", Pixel("Fringe")), Pixel("Face"), Pixel("Neck"), Pixel("Back hair"), Pixel("Mystery"));

    private protected override LayerFile CreateBad() => File(Group("Hair", Pixel("Fringe"), Pixel("Back hair")), Group("Body", Pixel("Face"), Pixel("Neck")), Pixel("Mystery"));

    // "tail" is a back part, but this one is the scarf's.
    [Fact]
    public void A_name_of_two_parts_is_no_back_part() =>
        Assert.DoesNotContain(LayerFileChecker.Check(File(Pixel("Scarf tail"), Pixel("Neck"), Pixel("Torso")), LayerProfiles.Default, cancellation: TestContext.Current.CancellationToken), finding => finding.Rule == nameof(BackPartInFront));

    [Fact]
    public void The_remedy_moves_it_behind_the_body()
    {
        var finding = Check(CreateBad()).Single();

        Assert.Contains("'Body/Neck'", finding.Message, StringComparison.Ordinal);
        Assert.Contains("| Move-Layer -After 'Body' -LiteralLayerPath 'Hair/Back hair' |", finding.Remedy, StringComparison.Ordinal);
    }
}
