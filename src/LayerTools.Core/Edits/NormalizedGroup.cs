using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>The layers of one group while they get new names.</summary>
internal sealed class NormalizedGroup
{
    private readonly HashSet<string> taken;
    private readonly Dictionary<Layer, NormalizedLayer> results;

    /// <param name="children">All layers of the group, front to back.</param>
    /// <param name="names">The new form of the names of those that are to be renamed.</param>
    /// <param name="results">Takes what becomes of each of those.</param>
    public NormalizedGroup(IReadOnlyList<Layer> children, IReadOnlyDictionary<Layer, NormalName> names, Dictionary<Layer, NormalizedLayer> results)
    {
        this.results = results;
        Members = [.. children.Where(layer => names.TryGetValue(layer, out var name) && name.Form is not null).Select(layer => new Member(layer, names[layer]))];
        // What is not renamed keeps its name, and nothing else may get it.
        var renamed = new HashSet<Layer>(Members.Select(member => member.Layer));
        taken = new HashSet<string>(children.Where(layer => !renamed.Contains(layer)).Select(layer => layer.Name), StringComparer.OrdinalIgnoreCase);
        foreach (var layer in children)
        {
            if (!renamed.Contains(layer) && names.TryGetValue(layer, out var left)) results[layer] = new NormalizedLayer(layer, null, left.Read.Certainty, left.Why!);
        }
    }

    /// <summary>The layers that get a new name, front to back.</summary>
    public IReadOnlyList<Member> Members { get; }

    /// <summary>Whether no layer of the group has a name yet.</summary>
    public bool IsFree(string name) => !taken.Contains(name);

    /// <summary>Gives a layer its name.</summary>
    public void Give(Member member, string name, bool isNumbered)
    {
        taken.Add(name);
        var why = string.Join(" ", member.Name.Read.Reasons);
        if (isNumbered) why += " It is numbered to tell it from its like.";
        results[member.Layer] = new NormalizedLayer(member.Layer, name, member.Name.Read.Certainty, why);
    }

    /// <summary>A layer that gets a new name.</summary>
    internal sealed record Member(Layer Layer, NormalName Name);
}
