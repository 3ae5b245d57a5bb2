using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class DuplicateNameTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Head/eye l", "Arm", "ARM"];

    private protected override LayerFile CreateGood() => ModelBuilder.File(ModelBuilder.Group("Arm", ModelBuilder.Pixel("Arm"), ModelBuilder.Pixel("Arm ")), ModelBuilder.Pixel("Arm 2"));

    private protected override LayerFile CreateBad() => ModelBuilder.File(
        ModelBuilder.Group("Head", ModelBuilder.Pixel("Eye L"), ModelBuilder.Pixel("eye l")), ModelBuilder.Pixel("Arm"), ModelBuilder.Pixel("Leg"), ModelBuilder.Pixel("Arm"), ModelBuilder.Pixel("ARM"));

    [Fact]
    public void The_remedy_numbers_them()
    {
        var finding = Check(CreateBad())[2];
        Assert.Contains("| Rename-Layer -LayerNumber 4, 6, 7 -NewName 'Arm {n}' -Number | Save-LayerFile -InPlace", finding.Remedy, StringComparison.Ordinal);
        Assert.Equal(("3 layers", "1 layer"), (finding.Measured, finding.Limit));
    }

    [Fact]
    public void Names_are_quoted() =>
        Assert.Contains("-NewName 'Nora''s $(hat) {n}'", Check(ModelBuilder.File(ModelBuilder.Pixel("Nora's $(hat)"), ModelBuilder.Pixel("Nora's $(hat)")))[0].Remedy, StringComparison.Ordinal);
}
