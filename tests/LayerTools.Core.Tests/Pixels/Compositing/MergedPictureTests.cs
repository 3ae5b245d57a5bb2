using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Masks;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Files drawn from their layers against the merged pictures that several other programs stored in them.</summary>
public class MergedPictureTests(ITestOutputHelper output)
{
    private const ushort MergedIsReal = 1057;

    /// <summary>Formula and rounding alone: some writers mix in whole numbers.</summary>
    private const int LargestDifference = 4;

    [Fact]
    public void Supported_files_are_drawn_as_the_programs_that_wrote_them_drew_them()
    {
        var files = FindComparable();
        Assert.SkipWhen(files.Count == 0, SharedFiles.Missing);
        var outliers = new List<string>();
        foreach (var file in files)
        {
            var (mean, max) = MergedPictureComparer.Compare(file);
            var line = FormattableString.Invariant($"{file.Name}: mean {mean:F3}, largest {max} of 255");
            output.WriteLine(line);
            // Some writers mix the edges of live text in another gamma, a setting that files do not hold; its pixels differ at edges only.
            if (mean > 1 || (max > LargestDifference && !HasText(file) && !HasFilledPath(file) && !HasFittedTones(file))) outliers.Add(line);
        }

        Assert.InRange(files.Count, 30, int.MaxValue);
        Assert.Empty(outliers);
    }

    [Fact]
    public void Transparency_is_drawn_as_the_programs_that_wrote_the_files_drew_it()
    {
        var files = FindComparable().Where(file => file.ColorMode == ColorMode.Rgb && ((PsdFileDetail)file.Detail).LayerInfo is { FirstAlphaIsTransparency: true }).ToList();
        Assert.SkipWhen(files.Count == 0, SharedFiles.Missing);

        Assert.All(files, file => Assert.InRange(MergedPictureComparer.CompareAlpha(file), 0, 1));
        Assert.InRange(files.Count, 5, int.MaxValue);
    }

    private static bool HasText(LayerFile file) => file.GetLayers().Any(layer => layer is { Kind: LayerKind.Text, EffectivelyVisible: true });

    /// <summary>The tone curve of brightness is fitted, not known, and is off by a few levels where it is steep.</summary>
    private static bool HasFittedTones(LayerFile file) => file.GetLayers().Any(layer => layer is { EffectivelyVisible: true, Detail.Adjustment: BrightnessContrast { IsStraight: false } });

    /// <summary>Everybody softens the edges of a path in a way of their own.</summary>
    private static bool HasFilledPath(LayerFile file) => file.GetLayers().Any(layer => layer.EffectivelyVisible && (layer.Kind == LayerKind.Shape ? !layer.HasStoredPixels : LayerMasks.Find(layer).Path is not null));

    private static List<LayerFile> FindComparable() =>
        [.. SharedFiles.FindLayered("corpus").Concat(SharedFiles.FindLayered("models")).Select(TryRead).OfType<LayerFile>().Where(file => IsMergedReal(file) && TruthReasons.Find(file) is null && CompositorSupport.FindNotDrawn(file).Count == 0)];

    private static LayerFile? TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayeredFileException)
        {
            return null;
        }
    }

    /// <summary>The fifth byte of the resource says it (PSD File Formats Specification, 'Version Info'); files without it are taken at their word.</summary>
    private static bool IsMergedReal(LayerFile file)
    {
        using var opened = new OpenedSources();
        return ((PsdFileDetail)file.Detail).Find(MergedIsReal)?.Data.ReadAll(opened) is not { } data || data[4] != 0;
    }
}
