using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A mask on a part or a group.</summary>
internal sealed class MaskLeftIn : LeftInRule
{
    public override string Id => nameof(MaskLeftIn);

    public override string Title => "A mask was left in";

    public override string Reason => "A rig takes the pixels of a part as they are stored, so that what a mask hides comes to light (common practice). Asked of every user mask and vector mask of what is a part by its name and groups.";

    public override Severity DefaultSeverity => Severity.Warning;

    private protected override string Message => "The layer has a mask, which a rig does not take.";

    private protected override bool IsLeftIn(Layer layer) => layer.HasMask;
}
