using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Real files with adjustment layers that change something, of which everything is drawn, against the pictures that the programs that wrote them stored.</summary>
public class AdjustmentTruthTests(ITestOutputHelper output)
{
    /// <summary>Mean difference of all samples, of 255. Without its adjustments a file must be off by more, or it says nothing about them.</summary>
    private const double LargestMean = 0.5;

    [Fact]
    public void Files_with_adjustment_layers_are_drawn_as_the_programs_that_wrote_them_drew_them()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        Assert.SkipWhen(SharedFiles.FindLayered("corpus").Count == 0, SharedFiles.Missing);
        foreach (var file in SharedFiles.FindLayered("corpus").Select(TryRead).OfType<LayerFile>().Where(file => FindAdjustments(file).Any() && TruthReasons.Find(file) is null && CompositorSupport.FindNotDrawn(file).Count == 0))
        {
            var (mean, max) = MergedPictureComparer.Compare(file);
            var words = FindAdjustments(file).Select(layer => layer.Detail.Adjustment!.Words).ToHashSet();
            foreach (var layer in FindAdjustments(file).ToList()) layer.Visible = false;
            var (meanWithout, _) = MergedPictureComparer.Compare(file);
            if (meanWithout <= LargestMean) continue;
            seen.UnionWith(words);
            output.WriteLine(FormattableString.Invariant($"{file.Name}: {string.Join(", ", words)}: mean {mean:F3}, largest {max}; without them mean {meanWithout:F3}"));
            Assert.True(mean <= LargestMean, $"{file.Path}: {mean}");
        }

        Assert.Empty(new[] { "brightness and contrast", "levels", "tone curves", "exposure", "threshold" }.Except(seen));
    }

    private static IEnumerable<Layer> FindAdjustments(LayerFile file) => file.GetLayers().Where(layer => layer is { EffectivelyVisible: true, Detail.Adjustment: not null });

    private static LayerFile? TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path) is { BitDepth: 8, ColorMode: ColorMode.Rgb or ColorMode.Grayscale } file ? file : null;
        }
        catch (LayeredFileException)
        {
            return null;
        }
    }
}
