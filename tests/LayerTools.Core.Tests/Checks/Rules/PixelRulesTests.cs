using LayerTools.Checks;
using LayerTools.Formats;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

/// <summary>What all rules about the pixels of parts have in common.</summary>
public class PixelRulesTests
{
    private static readonly string[] Ids =
    [
        "ArtOffCentre", "EmptyPart", "FaintPixelsWidenBounds", "HalfTransparentHoles", "PairDiffersInPlace", "PairDiffersInSize",
        "PartWithoutOpposite", "PixelsOutsideCanvas", "SideContradictsPlace", "StrayIslands",
    ];

    private static IReadOnlyList<CheckRule> Rules => [.. Ids.Select(id => CheckRules.Find(id)!)];

    [Fact]
    public void A_figure_that_is_as_it_should_be_has_no_findings()
    {
        // An invented figure, written by ag-psd.
        Assert.SkipWhen(SharedFiles.Find("models/figure-small.psd") is null, SharedFiles.Missing);
        var file = LayerFiles.Read(SharedFiles.Find("models/figure-small.psd")!);

        Assert.Empty(LayerFileChecker.Check(file, LayerProfiles.Default, Rules, TestContext.Current.CancellationToken).Select(finding => finding.Message));
    }

    [Fact]
    public void Every_file_there_is_can_be_asked()
    {
        var count = 0;
        foreach (var path in SharedFiles.Fixtures)
        {
            var findings = LayerFileChecker.Check(LayerFiles.Read(path), LayerProfiles.Default, Rules, TestContext.Current.CancellationToken);

            Assert.All(findings, finding => Assert.DoesNotContain("NaN", finding.Message + finding.Measured, StringComparison.Ordinal));
            count++;
        }

        Assert.InRange(count, 100, int.MaxValue);
    }
}
