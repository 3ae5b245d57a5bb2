using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Masks;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Masks;

public class LayerMasksTests
{
    private static readonly Bounds Painted = new(0, 0, 8, 8);
    private static readonly Bounds Rendered = new(2, 2, 4, 4);

    [Fact]
    public void A_painted_mask_counts_for_every_kind_of_layer()
    {
        Assert.Equal(PlaneRole.UserMask, LayerMasks.Find(Create(LayerKind.Pixel, 0, null)).Stored!.Role);
        Assert.Equal(PlaneRole.UserMask, LayerMasks.Find(Create(LayerKind.Shape, 0, null)).Stored!.Role);
    }

    [Fact]
    public void A_rendered_mask_counts_for_pixels_and_not_for_a_shape_that_is_cut_out_already()
    {
        Assert.Equal(Rendered, LayerMasks.Find(Create(LayerKind.Pixel, LayerMask.RenderedFlag, null)).Stored!.Bounds);
        Assert.Null(LayerMasks.Find(Create(LayerKind.Shape, LayerMask.RenderedFlag, null)).Stored);
    }

    [Fact]
    public void A_shape_keeps_what_was_painted_by_hand()
    {
        var found = LayerMasks.Find(Create(LayerKind.Shape, LayerMask.RenderedFlag, Painted)).Stored!;

        Assert.Equal((PlaneRole.PaintedMask, Painted, (byte)255), (found.Role, found.Bounds, found.DefaultColor));
    }

    [Fact]
    public void A_disabled_mask_does_not_count()
    {
        Assert.Null(LayerMasks.Find(Create(LayerKind.Pixel, LayerMask.DisabledFlag, null)).Stored);
        Assert.Null(LayerMasks.Find(Create(LayerKind.Shape, LayerMask.RenderedFlag, Painted, LayerMask.DisabledFlag)).Stored);
    }

    private static Layer Create(LayerKind kind, byte flags, Bounds? painted, byte paintedFlags = 0) => new(kind, "Arm", new StubLayerDetail())
    {
        Mask = new LayerMask { Bounds = Rendered, Flags = flags, PaintedBounds = painted, PaintedDefaultColor = 255, PaintedFlags = paintedFlags },
    };
}
