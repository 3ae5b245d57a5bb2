using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>An adjustment layer.</summary>
internal sealed class AdjustmentLeftIn : LeftInRule
{
    public override string Id => nameof(AdjustmentLeftIn);

    public override string Title => "An adjustment layer was left in";

    public override string Reason => "An adjustment has no pixels; without it the parts below have other colours than the artist saw (common practice).";

    public override Severity DefaultSeverity => Severity.Warning;

    private protected override string Message => "The layer adjusts what lies below it and has no pixels of its own.";

    private protected override bool IsLeftIn(Layer layer) => layer.Kind == LayerKind.Adjustment;
}
