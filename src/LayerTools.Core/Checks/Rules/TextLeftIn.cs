using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>Live text.</summary>
internal sealed class TextLeftIn : LeftInRule
{
    public override string Id => nameof(TextLeftIn);

    public override string Title => "Live text was left in";

    public override string Reason => "Live text is drawn anew by each program, in a font that it may not have; a rig takes pixels (common practice).";

    public override Severity DefaultSeverity => Severity.Warning;

    private protected override string Message => "The layer is live text.";

    private protected override bool IsLeftIn(Layer layer) => layer.Kind == LayerKind.Text;
}
