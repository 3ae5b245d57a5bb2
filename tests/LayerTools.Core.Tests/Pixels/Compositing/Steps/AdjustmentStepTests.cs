using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Model.Fills;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing.Steps;

/// <summary>Where adjustment layers work: what is below them, within groups and clipping runs, through masks and modes.</summary>
public class AdjustmentStepTests
{
    private static readonly Bounds Canvas = new(0, 0, 4, 1);

    [Fact]
    public void Everything_below_is_changed_and_nothing_above() =>
        Assert.Equal([10, 10, 155, 155], RenderGrey(Grey(4, 1, Even("Above", new Bounds(0, 0, 2, 1), 10), Inverting(), Even("Below", Canvas, 100))));

    [Fact]
    public void What_is_transparent_stays_so()
    {
        var drawn = Render(Grey(4, 1, Inverting(), Even("Below", new Bounds(0, 0, 2, 1), 100, alpha: 51)), withAlpha: true);

        Assert.Equal([51, 51, 0, 0], drawn[1]);
        // 155 at a fifth on white
        Assert.Equal([235, 235, 255, 255], drawn[0]);
    }

    [Fact]
    public void Opacity_fades_between_before_and_after() =>
        Assert.Equal([122, 122, 122, 122], RenderGrey(Grey(4, 1, Inverting().With(layer => layer.OpacityByte = 102), Even("Below", Canvas, 100))));

    [Fact]
    public void A_mask_limits_it() =>
        Assert.Equal([100, 155, 155, 100], RenderGrey(Grey(4, 1, Inverting().Masked(new Bounds(1, 0, 3, 1), 255), Even("Below", Canvas, 100))));

    [Fact]
    public void A_mask_that_shows_outside_works_there_too() =>
        Assert.Equal([155, 100, 100, 155], RenderGrey(Grey(4, 1, Inverting().Masked(new Bounds(1, 0, 3, 1), 0, outside: 255), Even("Below", Canvas, 100))));

    [Fact]
    public void The_changed_colours_are_mixed_in_by_its_mode() => // 100 · 155 / 255
        Assert.Equal([61, 61, 61, 61], RenderGrey(Grey(4, 1, Inverting().With(layer => layer.BlendMode = BlendMode.Multiply), Even("Below", Canvas, 100))));

    [Fact]
    public void In_an_isolated_group_only_the_group_is_changed()
    {
        var group = Group("Head", BlendMode.Normal, Inverting(), Even("Face", new Bounds(1, 0, 3, 1), 100));

        Assert.Equal([30, 155, 155, 30], RenderGrey(Grey(4, 1, group, Even("Below", Canvas, 30))));
    }

    [Fact]
    public void In_a_group_that_passes_through_all_below_is_changed()
    {
        var group = Group("Head", BlendMode.PassThrough, Inverting(), Even("Face", new Bounds(1, 0, 3, 1), 100));

        Assert.Equal([225, 155, 155, 225], RenderGrey(Grey(4, 1, group, Even("Below", Canvas, 30))));
    }

    [Fact]
    public void In_a_group_with_a_sheet_the_colour_behind_it_is_changed_too()
    {
        var group = Group("Board", BlendMode.PassThrough, Inverting()).With(layer => ((StubLayerDetail)layer.Detail).Board = new Artboard(new Bounds(1, 0, 3, 1), new FillColor(0.2f, 0.2f, 0.2f)));

        Assert.Equal([30, 204, 204, 30], RenderGrey(Grey(4, 1, group, Even("Below", Canvas, 30))));
    }

    [Fact]
    public void Clipped_it_changes_its_base_alone()
    {
        var clipped = Inverting().With(layer => layer.Clipped = true);

        Assert.Equal([30, 155, 155, 30], RenderGrey(Grey(4, 1, clipped, Even("Face", new Bounds(1, 0, 3, 1), 100), Even("Below", Canvas, 30))));
    }

    [Fact]
    public void Clipped_to_a_translucent_base_it_changes_the_bases_colour_and_not_its_opacity()
    {
        var clipped = Inverting().With(layer => layer.Clipped = true);

        // 155 at two fifths over 30
        Assert.Equal([80, 80, 80, 80], RenderGrey(Grey(4, 1, clipped, Even("Face", Canvas, 100, alpha: 102), Even("Below", Canvas, 30))));
    }

    [Fact]
    public void A_known_adjustment_is_supported_and_an_unknown_one_named()
    {
        Assert.Empty(CompositorSupport.FindNotDrawn(Grey(4, 1, Inverting())));
        Assert.Equal(["Tone: adjustment layer"], CompositorSupport.FindNotDrawn(Grey(4, 1, ModelBuilder.Other(LayerKind.Adjustment, "Tone"))));
        Assert.Equal(["Tone: adjustment layer"], CompositorSupport.FindNotDrawn(Grey(4, 1, Adjusting(new ChannelMix([])))));
    }

    [Fact]
    public void What_is_clipped_to_an_adjustment_is_named()
    {
        var file = Grey(4, 1, Even("Shade", Canvas, 9).With(layer => layer.Clipped = true), Inverting());

        Assert.Equal(["Tone: layers clipped to an adjustment layer"], CompositorSupport.FindNotDrawn(file));
    }

    [Fact]
    public void A_formula_of_our_own_is_noted()
    {
        var balance = Adjusting(new ColorBalance(default, default, default, KeepsLuminosity: false));

        Assert.StartsWith("Tone: colour balance", Assert.Single(CompositorSupport.FindNotes(Create(ColorMode.Rgb, 8, 4, 1, balance))), StringComparison.Ordinal);
        Assert.Empty(CompositorSupport.FindNotes(Grey(4, 1, Inverting())));
    }

    private static Layer Inverting() => Adjusting(new Inversion());

    private static Layer Adjusting(Adjustment adjustment) => ModelBuilder.Other(LayerKind.Adjustment, "Tone").With(layer => ((StubLayerDetail)layer.Detail).Changes = adjustment);
}
