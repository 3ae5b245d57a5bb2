using LayerTools.Deliveries;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Names that layers had in an older delivery.</summary>
internal sealed class RecoveredNames(NameRecovery recovery) : NameSource
{
    public override IReadOnlyList<(Layer Layer, string Name)> Propose(LayerFile file, IReadOnlyList<Layer> layers, int firstNumber, List<string> warnings)
    {
        var rows = recovery.Explain(layers);
        var unsure = rows.Where(row => row.Old is null && row.MatchedBy != MatchEvidence.None).ToList();
        warnings.AddRange(unsure.Select(row => $"'{row.Layer.LayerPath}' keeps its name. {row.Why}"));
        return [.. rows.Where(row => row.Old is not null).Select(row => (row.Layer, row.Old!))];
    }
}
