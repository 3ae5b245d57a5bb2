using LayerTools.Errors;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Profiles;

public class LayerProfilesTests
{
    [Fact]
    public void The_default_is_the_first_that_ships()
    {
        Assert.Same(LayerProfiles.Shipped[0], LayerProfiles.Default);
        Assert.Equal("figure", LayerProfiles.Default.Name);
        Assert.Null(LayerProfiles.Default.Path);
        Assert.Equal(SideOwner.Character, LayerProfiles.Default.Naming.Sides.Owner);
    }

    [Theory]
    [InlineData("figure-ja", "figure-ja")]
    [InlineData("FIGURE", "figure")]
    [InlineData("nobody", null)]
    public void Shipped_profiles_are_found_by_name(string name, string? found) => Assert.Equal(found, LayerProfiles.FindShipped(name)?.Name);

    [Fact]
    public void What_a_file_leaves_out_is_as_in_a_new_profile()
    {
        using var folder = new TemporaryFolder();
        var path = folder["bare.layerprofile.json"];
        File.WriteAllText(path, """{ "name": "bare" }""");
        var profile = LayerProfiles.Read(path);
        Assert.Equal(path, profile.Path);
        Assert.Equal(new CanvasProfile(), profile.Canvas);
        Assert.Equal(new TextureProfile(), profile.Textures);
        Assert.Equal(ScreenSize.Common, Assert.Single(profile.Screens));
    }

    [Fact]
    public void A_missing_file_is_told_as_such()
    {
        var error = Assert.Throws<LayeredFileException>(() => LayerProfiles.Read(Path.Combine(Path.GetTempPath(), "none", "none.layerprofile.json")));
        Assert.Equal(LayeredFileErrorKind.Unavailable, error.Kind);
    }
}
