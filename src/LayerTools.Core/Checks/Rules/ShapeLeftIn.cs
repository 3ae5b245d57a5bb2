using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A shape, or a fill that is no backdrop.</summary>
internal sealed class ShapeLeftIn : LeftInRule
{
    public override string Id => nameof(ShapeLeftIn);

    public override string Title => "A shape or fill was left in";

    public override string Reason => "Shapes and fills are described by paths and colours, not painted; many store no pixels, and a rig takes pixels (common practice). Fills called a backdrop are left out.";

    public override Severity DefaultSeverity => Severity.Warning;

    private protected override string Message => "The layer is described, not painted.";

    private protected override bool IsLeftIn(Layer layer) => layer.Kind is LayerKind.Shape or LayerKind.Fill;
}
