using LayerTools.Edits;

namespace LayerTools;

/// <summary>A name in a profile's form that was asked about and not given. As a map, rows of names that stay are passed over.</summary>
public sealed class NormalizePreview : RenamePreview
{
    internal NormalizePreview(NormalizedLayer row, string filePath)
        : base(row.Layer, row.New, filePath)
    {
        Certainty = (int)Math.Round(row.Certainty * 100);
        Why = row.Why;
    }

    /// <summary>How sure the reading of the name is, 0 to 100 %. A rule of thumb, not a probability.</summary>
    public int Certainty { get; }

    /// <summary>How the name was understood, or why it stays as it is.</summary>
    public string Why { get; }
}
