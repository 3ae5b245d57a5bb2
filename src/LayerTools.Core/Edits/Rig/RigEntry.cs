using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>What is being done with a layer while a file is baked.</summary>
internal sealed class RigEntry(Layer source)
{
    public Layer Source { get; } = source;

    /// <summary>The layer it becomes, or becomes a part of; null if it is left out.</summary>
    public Layer? Target { get; set; }

    public RigOutcome Outcome { get; set; } = RigOutcome.Unchanged;

    public List<string> Baked { get; } = [];

    public List<string> NotBaked { get; } = [];

    public void Drop(string reason)
    {
        Outcome = RigOutcome.Dropped;
        Target = null;
        NotBaked.Add(reason);
    }
}
