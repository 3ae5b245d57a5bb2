using LayerTools.Model;
using LayerTools.Sheets.Parts;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Parts;

public class SheetPartsTests
{
    [Fact]
    public void Parts_are_layers_that_carry_pixels_in_their_order_each_once()
    {
        var brow = ModelBuilder.Pixel("Brow L");
        var empty = ModelBuilder.Pixel("Layer 37", Bounds.Empty);
        var hidden = ModelBuilder.Pixel("Sketch");
        hidden.Visible = false;
        var file = ModelBuilder.File(ModelBuilder.Group("Head", brow), empty, ModelBuilder.Other(LayerKind.Adjustment, "Tone"), ModelBuilder.Other(LayerKind.Fill, "Plain fill"),
            ModelBuilder.Other(LayerKind.Text, "Note"), hidden);
        Assert.Equal(["Brow L", "Layer 37", "Note", "Sketch"], SheetParts.Select(file.GetLayers().Append(brow)).Select(part => part.Name));
    }
}
