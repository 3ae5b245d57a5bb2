using LayerTools.Edits;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>Files of inks, L*a*b* and duotone keep their own colours when the merged picture is redrawn.</summary>
public class OtherColorsSaveTests
{
    [Theory]
    [InlineData("cmyk-8.psd", "inks are turned to RGB by the plain formula")]
    [InlineData("duotone.psd", "the inks of a duotone are left out")]
    [InlineData("lab-8.psd", null)]
    public void The_merged_picture_is_redrawn_in_the_files_own_colours(string name, string? note)
    {
        using var folder = new TemporaryFolder();
        var file = LayerFiles.Read(SharedFiles.Fixtures.Single(path => Path.GetFileName(path) == name));
        var before = StoredRaster.Read(file);
        new SetLayerEdit { Visible = false }.Plan(file, [file.GetLayers().First()]).Apply();

        var result = LayerFiles.Save(file, folder[name], new SaveOptions());
        var saved = LayerFiles.Read(folder[name]);

        var after = StoredRaster.Read(saved);
        Assert.Equal(file.ColorMode, saved.ColorMode);
        Assert.NotEqual(before.Pixels, after.Pixels);
        Assert.Equal(Draw(saved).Pixels, after.Pixels);
        if (note is null) Assert.Empty(result.Warnings);
        else Assert.Contains(note, Assert.Single(result.Warnings), StringComparison.Ordinal);
    }

    private static Raster Draw(LayerFile file)
    {
        using var reader = new PixelReader(file);
        return new Compositor(file, reader).RenderRaster(file.Width, file.Height);
    }
}
