using LayerTools.Deliveries;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Core.Tests.Deliveries;

public class DeliveryComparerTests
{
    [Fact]
    public void A_thousand_random_edit_scripts_are_found_exactly()
    {
        for (var seed = 0; seed < 1000; seed++)
        {
            var script = new EditScript(seed, severalEdits: true);
            AssertFound(script, seed, layer => layer.Id!.Value);
        }
    }

    [Fact]
    public void Without_ids_one_edit_of_each_layer_is_found_exactly()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var script = new EditScript(seed, severalEdits: false);
            var ids = script.DropIds();
            AssertFound(script, seed, layer => ids[layer]);
        }
    }

    // One real file is cut off in its merged picture and is not read.
    [Fact]
    public void Every_file_is_the_same_as_itself() => Assert.All(SharedFiles.All.Where(path => Path.GetFileName(path) != "group-divider-blend-mode.psd"), path =>
    {
        var comparison = DeliveryComparer.Compare(LayerTools.Formats.LayerFiles.Read(path), LayerTools.Formats.LayerFiles.Read(path), TestContext.Current.CancellationToken);
        Assert.All(comparison.Differences, difference => Assert.Equal(LayerChange.Same, difference.Change));
        Assert.Empty(comparison.Warnings);
    });

    private static void AssertFound(EditScript script, int seed, Func<Layer, int> idOf)
    {
        var differences = DeliveryComparer.Compare(script.Old, script.New, TestContext.Current.CancellationToken).Differences;
        var olds = script.Old.GetLayers().ToDictionary(layer => layer.LayerNumber);
        var news = script.New.GetLayers().ToDictionary(layer => layer.LayerNumber);
        foreach (var difference in differences)
        {
            var layer = difference.LayerNumber is { } number ? news[number] : olds[difference.OldLayerNumber!.Value];
            var id = idOf(layer);
            Assert.True(script.Expected[id] == difference.Change, $"seed {seed}, '{difference.OldLayerPath}' to '{difference.LayerPath}': {difference.Change} instead of {script.Expected[id]}");
            if (difference.OldLayerNumber is { } old && difference.LayerNumber is not null) Assert.Equal(id, idOf(olds[old]));
            if (difference.Change.HasFlag(LayerChange.Moved)) Assert.Equal(script.Shifts[id], (difference.MovedRight!.Value, difference.MovedDown!.Value));
            if (!difference.Change.HasFlag(LayerChange.Repainted)) continue;
            var repaint = script.Repaints[id];
            Assert.Equal((repaint.Box, repaint.Largest), (difference.ChangedBox!.Value, difference.LargestDifference!.Value));
        }

        Assert.Equal(script.Expected.Count, differences.Count);
    }
}
