using LayerTools.Measures;

namespace LayerTools.Checks.Rules;

/// <summary>A sketch, or lines and pictures to work by.</summary>
internal sealed class SketchOrGuideLayer : CheckRule
{
    public override string Id => nameof(SketchOrGuideLayer);

    public override string Title => "A sketch or guide was left in";

    public override string Reason => "Sketches, guides and reference pictures are no parts and get in the way of a rig (common practice). Told by the last word of the name, in English or Japanese; of a group of them the group alone is named.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context) =>
        from layer in context.File.GetLayers()
        let role = context.RoleOf(layer)
        where role is (LayerRole.Sketch or LayerRole.Guide) && (layer.GetParent() is not { } outer || context.RoleOf(outer) is not (LayerRole.Sketch or LayerRole.Guide))
        select Find(context, layer, role == LayerRole.Sketch ? "The name says that this is a sketch." : "The name says that this is a guide or a picture to work by.", Remedy.Edit(layer, "Remove-Layer"));
}
