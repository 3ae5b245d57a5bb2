using LayerTools.Figure.Parts;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Figure;

/// <summary>Paints a tree of parts into a layered file.</summary>
internal sealed class FigureWriter
{
    private const int DisabledFlag = 2;
    private const int InvertedFlag = 4;

    private readonly PartPainter painter;
    private readonly LayerFile file;
    private int lastId;

    private FigureWriter(string path, float scale)
    {
        painter = new PartPainter(scale);
        file = LayerFiles.Create(path, new NewFileOptions { Width = painter.CanvasWidth, Height = painter.CanvasHeight, Ppi = 600 });
    }

    /// <summary>Writes the file, over an existing one.</summary>
    public static SaveResult Write(string path, IReadOnlyList<FigurePart> tree, float scale)
    {
        var writer = new FigureWriter(path, scale);
        // The blank file's own backdrop makes room for the figure's.
        foreach (var layer in writer.file.GetChildren().ToList()) layer.Detach();
        writer.Fill(writer.file.Root, tree);
        writer.file.Renumber();
        writer.file.IsPictureStale = true;
        return LayerFiles.Save(writer.file, path, new SaveOptions { Force = true });
    }

    private void Fill(Layer group, IEnumerable<FigurePart> parts)
    {
        foreach (var part in parts)
        {
            var layer = CreateLayer(part);
            group.Append(layer);
            Fill(layer, part.Children);
        }
    }

    private Layer CreateLayer(FigurePart part)
    {
        var kind = part.IsGroup ? LayerKind.Group : LayerKind.Pixel;
        var layer = new Layer(kind, part.Name, file.Detail.CreateLayerDetail(kind))
        {
            Id = ++lastId,
            BlendMode = part.Mode,
            OpacityByte = (byte)MathF.Round(part.Opacity * 255),
            Visible = !part.IsHidden,
            Clipped = part.IsClipped,
            Mark = part.Mark,
        };
        if (!part.IsGroup) Paint(layer, part);
        // A group's record has the channels of a layer, without samples.
        else layer.Planes = [.. new[] { PlaneRole.Alpha, PlaneRole.Color0, PlaneRole.Color1, PlaneRole.Color2 }.Select(role => new Plane(role, (int)Compression.Raw, MemoryBytes.Empty))];
        if (part.Mask is { } mask) Paint(layer, mask, part.IsReflected);
        return layer;
    }

    private void Paint(Layer layer, FigurePart part)
    {
        var (bounds, pixels) = painter.Paint(part);
        layer.Bounds = bounds;
        layer.Planes =
        [
            Pack(PlaneRole.Alpha, bounds, pixels, 3), Pack(PlaneRole.Color0, bounds, pixels, 0),
            Pack(PlaneRole.Color1, bounds, pixels, 1), Pack(PlaneRole.Color2, bounds, pixels, 2),
        ];
    }

    private void Paint(Layer layer, FigureMask mask, bool isReflected)
    {
        var (bounds, samples) = painter.Paint(mask, isReflected);
        layer.Mask = new LayerMask { Bounds = bounds, Flags = (byte)((mask.IsDisabled ? DisabledFlag : 0) | (mask.IsInverted ? InvertedFlag : 0)) };
        layer.Planes.Add(PlanePacker.Pack(PlaneRole.UserMask, Compression.PackBits, bounds.Width, bounds.Height, 8, file.Format, samples, file.Spool));
    }

    private Plane Pack(PlaneRole role, Bounds bounds, Raster pixels, int channel) =>
        PlanePacker.Pack(role, Compression.PackBits, bounds.Width, bounds.Height, 8, file.Format, (y, row) =>
        {
            var source = pixels.Row(y);
            for (var x = 0; x < row.Length; x++) row[x] = source[x * 4 + channel];
        }, file.Spool);
}
