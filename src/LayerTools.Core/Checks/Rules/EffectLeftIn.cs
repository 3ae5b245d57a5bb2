using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A layer effect, such as a shade or an outline.</summary>
internal sealed class EffectLeftIn : LeftInRule
{
    public override string Id => nameof(EffectLeftIn);

    public override string Title => "A layer effect was left in";

    public override string Reason => "Effects are drawn by the program that painted the figure and are missing in the stored pixels that a rig takes (common practice). Asked of effects that are switched on. Baking does not take those of groups in; put them on the parts first.";

    public override Severity DefaultSeverity => Severity.Warning;

    private protected override string Message => "The layer has effects, which a rig does not take.";

    private protected override bool IsLeftIn(Layer layer) => (layer.Detail.Features & LayerFeatures.Effects) != 0;
}
