using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A layer clipped to another.</summary>
internal sealed class ClippingLeftIn : LeftInRule
{
    public override string Id => nameof(ClippingLeftIn);

    public override string Title => "A layer is clipped to another";

    public override string Reason => "A rig takes each layer alone, so that a clipped one shows beyond its base. It is a note, since baking merges it into its base or cuts it to its shape (common practice).";

    public override Severity DefaultSeverity => Severity.Note;

    private protected override string Message => "The layer is clipped to the one behind it; alone it shows beyond its shape.";

    private protected override bool IsLeftIn(Layer layer) => layer.Clipped;
}
