using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>Which layers are left out of a rig's file, and why.</summary>
internal sealed class RigSelection
{
    private readonly RigEdit edit;
    private readonly Dictionary<Layer, string> leftOut = [];
    private readonly HashSet<Layer> named = [];

    public RigSelection(LayerFile file, RigEdit edit)
    {
        this.edit = edit;
        Visit(file.GetChildren(), inherited: null);
    }

    public bool IsLeftOut(Layer layer) => leftOut.ContainsKey(layer);

    public string? FindReason(Layer layer) => leftOut.TryGetValue(layer, out var reason) ? reason : null;

    /// <summary>Every layer that is left out, with the reason.</summary>
    public IEnumerable<KeyValuePair<Layer, string>> All => leftOut;

    private void Visit(IReadOnlyList<Layer> layers, string? inherited)
    {
        foreach (var layer in layers) Visit(layer, inherited);
        foreach (var run in ClippingRun.Split(layers))
        {
            if (run.Base is null || !leftOut.ContainsKey(run.Base)) continue;
            if (run.Clipped.Any(named.Contains))
            {
                // What is to be kept needs what it is clipped to.
                leftOut.Remove(run.Base);
                continue;
            }

            foreach (var clipped in run.Clipped.Where(clipped => !leftOut.ContainsKey(clipped)))
            {
                foreach (var gone in clipped.GetLayers().Prepend(clipped)) leftOut[gone] = $"clipped to '{run.Base.LayerPath}', which is left out";
            }
        }
    }

    private void Visit(Layer layer, string? inherited)
    {
        var isKept = edit.Keep?.Invoke(layer) == true;
        if (isKept) named.Add(layer);
        var reason = isKept ? null : inherited ?? FindOwn(layer);
        if (reason is not null) leftOut[layer] = reason;
        if (!layer.IsGroup) return;
        if (isKept) KeepAll(layer);
        else Visit(layer.GetChildren(), reason);
        // A group stays for the sake of what is kept in it.
        if (reason is not null && layer.GetLayers().Any(named.Contains)) leftOut.Remove(layer);
    }

    private void KeepAll(Layer group)
    {
        foreach (var layer in group.GetLayers())
        {
            named.Add(layer);
            if (edit.Drop?.Invoke(layer) == true) leftOut[layer] = "named to be left out";
        }
    }

    private string? FindOwn(Layer layer)
    {
        if (edit.Drop?.Invoke(layer) == true) return "named to be left out";
        if (edit.DropHidden && !layer.Visible) return "hidden";
        return edit.Roles.TellRole(layer) switch
        {
            LayerRole.Backdrop => "a backdrop by its name",
            LayerRole.Sketch => "a sketch by its name",
            LayerRole.Guide => "a guide by its name",
            _ => null,
        };
    }
}
