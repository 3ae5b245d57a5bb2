using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>Content placed from another file.</summary>
internal sealed class PlacedLeftIn : LeftInRule
{
    public override string Id => nameof(PlacedLeftIn);

    public override string Title => "Placed content was left in";

    public override string Reason => "Placed content is drawn anew from another file, at any size; a rig takes the pixels that are stored (common practice).";

    public override Severity DefaultSeverity => Severity.Warning;

    private protected override string Message => "The layer holds content placed from another file.";

    private protected override bool IsLeftIn(Layer layer) => layer.Kind == LayerKind.Placed;
}
