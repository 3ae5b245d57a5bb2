using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;

namespace LayerTools.Tests.Support;

/// <summary>A file format's part of a layer in tests that need no format: remembers what was asked of it.</summary>
internal sealed class StubLayerDetail : LayerDetail
{
    public LayerFeatures Uses { get; set; }

    public Adjustment? Changes { get; set; }

    public List<string> Calls { get; private set; } = [];

    public Fill? Described { get; set; }

    public IReadOnlyList<Effect> Effects { get; set; } = [];

    public VectorPath? Path { get; set; }

    public Artboard? Board { get; set; }

    public BlendingRules Rules { get; set; } = BlendingRules.None;

    /// <summary>What cannot be told in pixels of another size.</summary>
    public string? KeptSize { get; set; }

    public override LayerFeatures Features => Uses;

    public override VectorPath? VectorPath => Path;

    public override Artboard? Artboard => Board;

    public override BlendingRules Blending => Rules;

    public override Fill? Fill => Described;

    public override IReadOnlyList<Effect> GetEffects(FileDetail file) => Effects;

    public override Adjustment? Adjustment => Changes;

    public override LayerDetail Copy() => new StubLayerDetail { Uses = Uses, Described = Described, Effects = Effects, Changes = Changes, Path = Path, Board = Board, Rules = Rules, Calls = [.. Calls] };

    public override void Reflect(int doubledAxis, int canvasWidth) => Calls.Add($"Reflect {doubledAxis} {canvasWidth}");

    public override void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight) =>
        Calls.Add($"Recanvas {right},{down} {oldWidth}x{oldHeight} {newWidth}x{newHeight}");

    public override LayerDetail Rescale(CanvasScale scale, ICollection<string> notes)
    {
        var copy = (StubLayerDetail)Copy();
        copy.Calls.Add($"Rescale {scale.OldWidth}x{scale.OldHeight} {scale.NewWidth}x{scale.NewHeight}");
        if (KeptSize is not null) notes.Add(KeptSize);
        return copy;
    }

    public override void DropLiveContent()
    {
        Calls.Add("DropLiveContent");
        Uses &= ~LayerFeatures.LiveContent;
    }

    public override LayerDetail ToPlain(bool keepsBlending) => new StubLayerDetail { Rules = keepsBlending ? Rules : BlendingRules.None, Uses = keepsBlending ? Uses & BlendingUses : LayerFeatures.None };

    public override LayerDetail WithoutBlending(bool keepsEffects)
    {
        var copy = (StubLayerDetail)Copy();
        copy.Rules = BlendingRules.None;
        copy.Uses &= ~BlendingUses;
        if (!keepsEffects) copy.Effects = [];
        return copy;
    }

    public override LayerDetail WithoutMasks()
    {
        var copy = (StubLayerDetail)Copy();
        copy.Path = null;
        return copy;
    }

    public override LayerDetail ForColorsOf(FileDetail file) => Copy();

    private const LayerFeatures BlendingUses = LayerFeatures.BlendingRanges | LayerFeatures.Knockout | LayerFeatures.ChannelRestrictions;
}
