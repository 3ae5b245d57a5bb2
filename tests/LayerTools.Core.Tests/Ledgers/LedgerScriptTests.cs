using LayerTools.Core.Tests.Deliveries;
using LayerTools.Deliveries;
using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Ledgers;

/// <summary>Random edits of random figures, all of whose parts were done before.</summary>
public class LedgerScriptTests
{
    private const LayerChange Content = LayerChange.Repainted | LayerChange.Masked;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Done_stays_done_unless_a_part_was_painted_or_masked(bool withIds)
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var script = new EditScript(seed, severalEdits: withIds);
            var ids = withIds ? script.Old.GetLayers().Concat(script.New.GetLayers()).ToDictionary(layer => layer, layer => layer.Id!.Value) : script.DropIds();
            var ledger = LedgerFigure.Update(script.Old, new LedgerUpdate { Now = LedgerFigure.Monday, Chosen = new HashSet<Layer>(script.Old.GetLayers()), State = PartState.Done });

            var join = LedgerFigure.Join(script.New, ledger);

            foreach (var row in join.Rows)
            {
                var change = script.Expected[ids[row.Layer!]];
                var told = FormattableString.Invariant($"seed {seed}, '{row.Layer!.LayerPath}', {change}: {row.State} by {row.Evidence}");
                if (change.HasFlag(LayerChange.Added)) Assert.True(row.State != PartState.Done, told);
                else Assert.True(row.State == ((change & Content) == 0 ? PartState.Done : PartState.Recheck), told);
            }

            var removed = script.Old.GetLayers().Where(layer => !layer.IsGroup && script.Expected[ids[layer]].HasFlag(LayerChange.Removed)).Select(layer => layer.LayerPath).ToList();
            if (withIds) Assert.Superset(new HashSet<string>(join.Vanished.Select(row => row.Entry!.LayerPath)), new HashSet<string>(removed));
            Assert.Equal(LedgerText.Write(LedgerFigure.Export(script.New, ledger)), LedgerText.Write(LedgerFigure.Export(script.New, LedgerFigure.Export(script.New, ledger))));
        }
    }
}
