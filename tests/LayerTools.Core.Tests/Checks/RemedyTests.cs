using LayerTools.Checks;
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
}
