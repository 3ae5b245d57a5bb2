using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class UntrimmedNameTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [" Head", " Head/Eye L\u3000", "Mouth\u200B"];

    private protected override LayerFile CreateGood() => ModelBuilder.File(ModelBuilder.Pixel("Eye L"), ModelBuilder.Pixel("\u2764\uFE0F"), ModelBuilder.Pixel("左腕"), ModelBuilder.Pixel(" "));

    private protected override LayerFile CreateBad() => ModelBuilder.File(ModelBuilder.Group(" Head", ModelBuilder.Pixel("Eye L\u3000"), ModelBuilder.Pixel("Eye  R")), ModelBuilder.Pixel("Mouth\u200B"));

    [Theory]
    [InlineData(" \tArm L\u00A0\r\n", "Arm L")]
    [InlineData("\uFEFFArm", "Arm")]
    [InlineData("\U0001F3A8 ", "\U0001F3A8")]
    [InlineData(" ", "")]
    public void What_nobody_sees_is_taken_off_the_ends(string name, string trimmed) => Assert.Equal(trimmed, TrimmedName.Of(name));
}
