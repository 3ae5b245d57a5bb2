using CsCheck;
using LayerTools.Images;
using LayerTools.Model;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Images;

public class ImageNamesTests
{
    [Fact]
    public void A_layer_gives_its_name() => Assert.Equal(["Arm L.png", "Body.png"], Choose(Pixel("Arm L"), Pixel("Body")));

    [Fact]
    public void Layers_of_one_name_take_the_names_of_their_groups() => Assert.Equal(
        ["Arm L - Shade.png", "Arm R - Shade.png", "Line.png"],
        Choose(Group("Arm L", Pixel("Shade")), Group("Arm R", Pixel("shade")), Pixel("Line")).Select(name => name.Replace("shade", "Shade")));

    [Fact]
    public void As_many_groups_are_named_as_it_takes() => Assert.Equal(
        ["A - Arm - Shade.png", "B - Arm - Shade.png"],
        Choose(Group("A", Group("Arm", Pixel("Shade"))), Group("B", Group("Arm", Pixel("Shade")))));

    [Fact]
    public void What_still_is_the_same_gets_numbers_that_no_other_layer_has() => Assert.Equal(
        ["Shade.png", "SHADE 3.png", "shade 2.png", "shade 4.png"],
        Choose(Pixel("Shade"), Pixel("SHADE"), Pixel("shade 2"), Pixel("shade")));

    [Fact]
    public void Names_that_only_become_the_same_when_made_safe_differ_too()
    {
        var names = Choose(Pixel("a?"), Pixel("a*"), Pixel("a_"), Pixel(""), Pixel("."));

        Assert.Equal(5, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Any_names_become_unique() =>
        Gen.String[Gen.Char["aA.? 2\u00E9e\u0301"], 0, 4].Array[1, 12].Sample(names => Assert.Equal(names.Length, Choose([.. names.Select(name => Pixel(name))]).Select(LayerTools.Names.FileNames.ToKey).Distinct().Count()));

    private static List<string> Choose(params Layer[] layers)
    {
        var parts = File(layers).GetLayers().Where(layer => layer.Kind == LayerKind.Pixel).ToList();
        var names = ImageNames.Choose(parts);
        return [.. parts.Select(part => names[part])];
    }
}
