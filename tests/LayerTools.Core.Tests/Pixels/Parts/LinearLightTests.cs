using LayerTools.Pixels.Parts;
using Xunit;

namespace LayerTools.Core.Tests.Pixels.Parts;

public class LinearLightTests
{
    [Fact]
    public void There_and_back_is_exact()
    {
        for (var value = 0; value < 256; value++) Assert.Equal(value, LinearLight.Encode((uint)LinearLight.Amounts[value]));
    }

    // IEC 61966-2-1: half the light of white is encoded as 188 (0.7354 x 255 = 187.5).
    [Fact]
    public void Half_the_light_is_188() => Assert.Equal(188, LinearLight.Encode(0.5));

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(2, 255)]
    public void Amounts_outside_are_cut_off(double amount, byte expected) => Assert.Equal(expected, LinearLight.Encode(amount));
}
