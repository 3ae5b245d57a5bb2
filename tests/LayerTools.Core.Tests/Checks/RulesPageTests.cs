using LayerTools.Checks;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks;

public class RulesPageTests
{
    /// <summary>Set to 1 to write the page anew after a rule was added or changed.</summary>
    private const string Switch = "LAYERTOOLS_WRITE_PAGES";

    [Fact]
    public void The_help_page_is_that_of_the_catalogue()
    {
        var path = Path.Combine(SharedFiles.FindFolder("Module"), "en-US", "about_LayerTools_Checks.help.txt");
        if (Environment.GetEnvironmentVariable(Switch) == "1") File.WriteAllText(path, RulesPage.Write());

        Assert.True(File.Exists(path) && File.ReadAllText(path).ReplaceLineEndings("\n") == RulesPage.Write(), $"Run this test with {Switch}=1 to write {path} anew.");
    }

    [Fact]
    public void Lines_fit_on_a_screen() => Assert.All(RulesPage.Write().Split('\n'), line => Assert.InRange(line.Length, 0, 120));
}
