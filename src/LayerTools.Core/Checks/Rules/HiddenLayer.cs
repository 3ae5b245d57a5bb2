using LayerTools.Measures;

namespace LayerTools.Checks.Rules;

/// <summary>A part or group that is switched off.</summary>
internal sealed class HiddenLayer : CheckRule
{
    public override string Id => nameof(HiddenLayer);

    public override string Title => "A layer is hidden";

    public override string Reason => "A hidden layer is a leftover, or a part that was forgotten when it was hidden to paint beneath it; whoever gets the file cannot tell. Of hidden groups the group alone is named.";

    public override Severity DefaultSeverity => Severity.Note;

    internal override IEnumerable<Finding> Check(CheckContext context) =>
        from layer in context.File.GetLayers()
        where !layer.Visible && (layer.GetParent()?.EffectivelyVisible ?? true) && context.RoleOf(layer) == LayerRole.Part
        select Find(context, layer, "The layer is hidden; show it if it is a part, else remove it.", Remedy.Edit(layer, "Set-Layer -Visible $true"));
}
