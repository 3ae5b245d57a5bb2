using LayerTools.Edits.Rig;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits.Rig;

/// <summary>Files of every kind, baked, saved and read back: fixtures and real ones.</summary>
public sealed class RigFilesTests : IDisposable
{
    private const int Rounding = 2;

    private readonly TemporaryFolder folder = new();

    public static TheoryData<string> Drawn => [.. SharedFiles.All.Where(path => IsDrawn(path, file => file.ColorMode is ColorMode.Rgb or ColorMode.Grayscale))];

    public static TheoryData<string> InOtherColors => [.. SharedFiles.All.Where(path => IsDrawn(path, file => file.ColorMode is ColorMode.Cmyk or ColorMode.Lab or ColorMode.Duotone))];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Drawn))]
    public void A_baked_file_shows_the_same_picture(string path)
    {
        var (file, edit) = Bake(path);
        if (WhyItMayDiffer(file, edit) is null) Assert.InRange(edit.Parts[0].FileDifference, 0, Rounding);
        if (edit.Parts[0].FileDifference > Rounding) AssertRefused(path);

        var (before, after) = SaveAndDraw(path, file);

        if (edit.Parts[0].FileDifference <= Rounding) AssertSame(before, after);
    }

    /// <summary>Inks and L*a*b* mix otherwise than light, so that soft edges may differ; the file must hold together all the same.</summary>
    [Theory]
    [MemberData(nameof(InOtherColors))]
    public void A_file_of_other_colours_becomes_one_of_light(string path)
    {
        var (file, edit) = Bake(path);
        var (before, after) = SaveAndDraw(path, file);
        if (edit.Parts[0].FileDifference <= Rounding) AssertSame(before, after);
        else AssertRefused(path);
    }

    [Theory]
    [MemberData(nameof(Drawn))]
    public void A_baked_file_has_nothing_left_to_bake(string path)
    {
        var (file, edit) = Bake(path);
        if (edit.Parts.Any(part => part.NotBaked.Length > 0 && part.Outcome != RigOutcome.Dropped)) return;
        Assert.All(file.GetLayers(), layer => Assert.True(layer is { HasMask: false, Clipped: false, Mask: null, FillOpacity: 255, Kind: LayerKind.Pixel or LayerKind.Group }));

        var again = new RigEdit { Keep = _ => true, AcceptDifference = true }.Plan(file, []);

        Assert.Empty(again.Steps);
    }

    private static (LayerFile File, RigEdit Edit) Bake(string path)
    {
        var file = LayerFiles.Read(path);
        var edit = new RigEdit { Keep = _ => true, AcceptDifference = true };
        var plan = edit.Plan(file, []);
        Assert.Equal(file.LayerCount, edit.Parts.Count);
        plan.Apply();
        return (file, edit);
    }

    /// <summary>What cannot be exact: linear light mixed as encoded light, adjustments that stay while the colours change, and soft edges of what clipped layers are cut to.</summary>
    private static string? WhyItMayDiffer(LayerFile file, RigEdit edit)
    {
        var original = LayerFiles.Read(file.Path);
        if (original.BitDepth == 32) return "linear light";
        if (original.ColorMode != ColorMode.Rgb && edit.Parts.Any(part => part is { Outcome: RigOutcome.Kept, Kind: LayerKind.Adjustment })) return "adjustment of grey";
        return edit.Parts.Any(part => part.Baked.Contains("cut to '")) ? "cut" : null;
    }

    private static void AssertRefused(string path)
    {
        var file = LayerFiles.Read(path);
        var error = Refused.Plan(file, new RigEdit { Keep = _ => true });
        Assert.Contains("the picture would differ", error.Message);
        Assert.Contains(file.GetLayers(), layer => error.Message.Contains($"'{layer.LayerPath}'"));
    }

    private (Raster Before, Raster After) SaveAndDraw(string path, LayerFile file)
    {
        var destination = folder[Path.GetFileName(path)];
        LayerFiles.Save(file, destination, new SaveOptions());
        var saved = LayerFiles.Read(destination);
        Assert.Equal((ColorMode.Rgb, 8), (saved.ColorMode, saved.BitDepth));
        Assert.Equal(file.Sketch(), saved.Sketch());
        return (Draw(LayerFiles.Read(path)), Draw(saved));
    }

    private static Raster Draw(LayerFile file)
    {
        using var reader = new PixelReader(file);
        return new Compositor(file, reader).RenderRaster(file.Width, file.Height);
    }

    private static void AssertSame(Raster one, Raster other)
    {
        Assert.Equal((one.Width, one.Height), (other.Width, other.Height));
        for (var i = 0; i < one.Pixels.Length; i += 4)
        {
            for (var channel = 0; channel < 3; channel++) Assert.InRange(((one.Pixels[i + channel] * one.Pixels[i + 3]) - (other.Pixels[i + channel] * other.Pixels[i + 3])) / 255, -Rounding, Rounding);
            Assert.InRange(one.Pixels[i + 3] - other.Pixels[i + 3], -Rounding, Rounding);
        }
    }

    private static bool IsDrawn(string path, Func<LayerFile, bool> isWanted)
    {
        try
        {
            var file = LayerFiles.Read(path);
            return isWanted(file) && file.GetLayers().Any(layer => !layer.IsGroup) && CompositorSupport.FindNotDrawn(file).Count == 0;
        }
        catch (Errors.LayeredFileException)
        {
            // Files that cannot be read have tests of their own.
            return false;
        }
    }
}
