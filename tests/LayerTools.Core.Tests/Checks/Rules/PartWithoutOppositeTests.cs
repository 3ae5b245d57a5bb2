using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class PartWithoutOppositeTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Ear R", "Arm L", "Leg L/Boot"];

    private protected override LayerFile CreateGood() => File(
        Of("Ear L").Rectangle(70, 10, 5, 5).ToLayer(),
        Of("ear_R").Rectangle(25, 10, 5, 5).ToLayer(),
        Group("Arm L", Of("Hand").Rectangle(70, 20, 5, 5).ToLayer()),
        Group("Arm R", Of("Hand").Rectangle(25, 20, 5, 5).ToLayer()),
        Of("Nose").Rectangle(48, 10, 4, 4).ToLayer(),
        Of("Guide L").Rectangle(70, 0, 1, 60).ToLayer(),
        Of("Brow L").Rectangle(60, 5, 5, 2, alpha: 0).ToLayer());

    private protected override LayerFile CreateBad() => File(
        Of("Ear R").Rectangle(25, 10, 5, 5).ToLayer(),
        Group("Arm L", Of("Hand").Rectangle(70, 20, 5, 5).ToLayer(), Of("Sleeve L").Rectangle(70, 10, 5, 9).ToLayer()),
        Group("Leg L", Of("Boot").Rectangle(60, 50, 5, 5).ToLayer(), Of("Thigh").Rectangle(60, 40, 5, 9).ToLayer()),
        Group("Leg R", Of("Thigh").Rectangle(35, 40, 5, 9).ToLayer()));

    [Fact]
    public void The_remedies_put_it_right()
    {
        var file = CreateBad();
        var findings = Check(file);

        Assert.Contains("| Copy-LayerMirror -From Right -LiteralLayerPath 'Ear R' |", findings[0].Remedy, StringComparison.Ordinal);
        Assert.Contains("| Copy-LayerMirror -From Left -LiteralLayerPath 'Arm L' |", findings[1].Remedy, StringComparison.Ordinal);
        foreach (var path in BadPaths)
        {
            var layer = file.Find(path!);
            new MirrorEdit { From = Opposites.SideOf(layer) }.Plan(file, [layer]).Apply();
        }

        Assert.Empty(Check(file));
    }

    [Fact]
    public void The_side_that_lacks_is_told()
    {
        var messages = Check(CreateBad()).Select(finding => finding.Message);

        Assert.Equal(["There is no part on the left for this one.", "There is no group on the right for this one.", "There is no part on the right for this one."], messages);
    }

    [Fact]
    public void A_part_that_a_figure_has_once_needs_none()
    {
        var tail = new VocabularyPart { Key = "tail", English = "tail", Japanese = "尾", Zone = "body-back" };
        var file = File(Of("Tail L").Rectangle(25, 10, 5, 5).ToLayer());

        Assert.Single(Check(file, WithPart(tail with { IsPaired = true })));
        Assert.Empty(Check(file, WithPart(tail)));

        LayerProfile WithPart(VocabularyPart part) => Profile with { Naming = new NamingStyle { Vocabulary = new Vocabulary([part]) } };
    }
}
