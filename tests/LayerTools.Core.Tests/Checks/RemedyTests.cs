using LayerTools.Checks;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks;

public class RemedyTests
{
    [Fact]
    public void An_edit_is_a_whole_command_that_keeps_the_original()
    {
        var path = Path.Combine(Path.GetTempPath(), "Nora's hero.psd");
        var file = ModelBuilder.File(path, 100, 60);

        var remedy = Remedy.Edit(file, "Set-LayerCanvas -Width 100");

        Assert.Equal($"Get-LayerFile -LiteralPath {Quoted.Of(path)} | Set-LayerCanvas -Width 100 | Save-LayerFile -InPlace -BackupFolder {Quoted.Of(Path.Combine(Path.GetDirectoryName(path)!, "before"))}", remedy);
    }

    [Fact]
    public void A_layer_is_chosen_by_its_path()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Head", ModelBuilder.Pixel("Eye 'L'")));

        Assert.Contains("| Remove-Layer -LiteralLayerPath 'Head/Eye ''L''' |", Remedy.Edit(file.Find("Head/Eye 'L'"), "Remove-Layer"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_layer_that_shares_its_path_is_chosen_by_its_number()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm"), ModelBuilder.Pixel("Arm"));

        Assert.Equal("-LayerNumber 2", Remedy.Choose(file.GetChildren()[1]));
    }

    [Fact]
    public void A_layer_whose_groups_share_a_path_is_chosen_by_its_number()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Arm", ModelBuilder.Pixel("Hand")), ModelBuilder.Group("Arm", ModelBuilder.Pixel("Hand")));

        Assert.Equal("-LayerNumber 4", Remedy.Choose(file.GetChildren()[1].GetChildren()[0]));
    }

    [Fact]
    public void Layers_whose_paths_read_alike_are_told_apart()
    {
        // Both paths read Arm\/Hand, since a slash in a name is written as \/.
        var file = ModelBuilder.File(ModelBuilder.Group("Arm\\", ModelBuilder.Pixel("Hand")), ModelBuilder.Pixel("Arm/Hand"));
        var (inside, beside) = (file.GetChildren()[0].GetChildren()[0], file.GetChildren()[1]);
        Assert.Equal(inside.LayerPath, beside.LayerPath);

        Assert.Equal("-LayerNumber 2", Remedy.Choose(inside));
        Assert.Equal("-LayerNumber 3", Remedy.Choose(beside));
        Assert.Equal("-LiteralLayerPath 'Arm\\/Hand'", Remedy.Choose(ModelBuilder.File(ModelBuilder.Pixel("Arm/Hand")).GetChildren()[0]));
    }

    [Fact]
    public void A_repair_goes_by_the_profile_that_was_asked_with()
    {
        var file = ModelBuilder.File();
        string Repair(LayerProfile profile) => Remedy.Repair(new CheckContext(file, profile, TestContext.Current.CancellationToken), "GuideOffAxis");

        Assert.Contains("| Repair-LayerFile -Rule GuideOffAxis |", Repair(LayerProfiles.Default), StringComparison.Ordinal);
        Assert.Contains("| Repair-LayerFile -Rule GuideOffAxis -Profile 'figure-ja' |", Repair(LayerProfiles.FindShipped("figure-ja")!), StringComparison.Ordinal);
        Assert.Contains(" -Profile 'it''s.layerprofile.json' |", Repair(LayerProfiles.Default with { Path = "it's.layerprofile.json" }), StringComparison.Ordinal);
    }
}
