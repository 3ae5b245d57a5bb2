using LayerTools.Deliveries;
using LayerTools.Edits;

namespace LayerTools;

/// <summary>A name from an older delivery that was asked about and not given. As a map, rows of names that stay are passed over.</summary>
public sealed class RecoveryPreview : RenamePreview
{
    internal RecoveryPreview(RecoveredName row, string filePath)
        : base(row.Layer, row.Old, filePath)
    {
        MatchedBy = row.MatchedBy;
        Certainty = (int)Math.Round(row.Certainty * 100);
        Why = row.Why;
    }

    /// <summary>By what the layer was found again.</summary>
    public MatchEvidence MatchedBy { get; }

    /// <summary>How sure that is, 0 to 100 %. A rule of thumb, not a probability.</summary>
    public int Certainty { get; }

    /// <summary>How the layer was found again, or why it keeps its name.</summary>
    public string Why { get; }
}
