using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A layer clipped to a group, or to nothing in its own group.</summary>
internal sealed class ClippedAcrossGroup : CheckRule
{
    public override string Id => nameof(ClippedAcrossGroup);

    public override string Title => "A layer is clipped across the edge of a group";

    public override string Reason => "A clipped layer belongs to one part. Clipped to a group it covers several, and a clipped layer at the back of a group has its base outside, where programs do not look for it; either way the parts cannot be told apart (common practice).";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var layer in context.File.GetLayers().Where(layer => layer.Clipped && context.RoleOf(layer) == LayerRole.Part))
        {
            var run = ClippingRun.Of(layer);
            if (run.Base is null) yield return Find(context, layer, "The layer is clipped, but nothing lies behind it in its group.", "Move it directly in front of its base where the file was made, or release its clipping.");
            else if (run.Base.IsGroup) yield return Find(context, layer, $"The layer is clipped to the whole group '{run.Base.Name}'.", $"Clip it to one part in '{run.Base.Name}', or merge the parts of that group where the file was made.");
        }
    }
}
