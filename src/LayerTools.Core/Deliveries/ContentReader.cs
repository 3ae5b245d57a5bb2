using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>
/// Finds out what layers hold. The fingerprint of pixels is taken of the size of the painted rectangle and of its rows: where what is not fully transparent begins and how long
/// it is, its opacity, and each colour, in the file's own samples. So it does not depend on packing, on filling, or on how far the stored rectangle reaches.
/// Can be used from several threads.
/// </summary>
internal sealed class ContentReader : IDisposable
{
    private readonly LayerFile file;
    private readonly PixelReader reader;
    private readonly OpenedSources opened = new();
    private readonly Lazy<ColorConverter> converter;
    private readonly CancellationToken cancellation;

    public ContentReader(LayerFile file, CancellationToken cancellation = default)
    {
        this.file = file;
        this.cancellation = cancellation;
        reader = new PixelReader(file);
        converter = new Lazy<ColorConverter>(reader.CreateConverter);
    }

    /// <summary>What a layer holds.</summary>
    /// <param name="layer">A layer or group of the file.</param>
    /// <param name="withLook">Whether to make its look too, where its colours can be turned to RGB.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public PartContent Read(Layer layer, bool withLook)
    {
        var outline = ReadOutline(layer);
        return new PartContent(
            outline,
            outline.Painted.IsEmpty ? HashLiveContent(layer) : HashPixels(layer, outline.Painted),
            withLook && !outline.Painted.IsEmpty && CanPaint ? PartLook.Create(Paint(layer, outline.Painted, PartLook.Side)) : null);
    }

    /// <summary>Where a layer is painted, and its masks.</summary>
    /// <exception cref="LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public PartOutline ReadOutline(Layer layer)
    {
        var painted = layer.IsGroup ? Bounds.Empty : FindPainted(layer);
        var (shape, place) = MaskFingerprint.Read(file, reader, layer, cancellation);
        return new PartOutline
        {
            Painted = painted,
            Mask = shape.Length == 0 ? shape : HashPlace(shape, place.X - painted.Left, place.Y - painted.Top),
            MaskShape = shape,
            MaskPlace = place,
        };
    }

    /// <summary>Whether a layer of this file and one of another hold the same pixels: what equal fingerprints say, without taking them.</summary>
    /// <exception cref="LayeredFileException">A channel is damaged, or a file changed on disk.</exception>
    public bool HasPixelsOf(Layer layer, Bounds painted, ContentReader other, Layer otherLayer, Bounds otherPainted)
    {
        if (painted.IsEmpty || otherPainted.IsEmpty) return painted.IsEmpty && otherPainted.IsEmpty && HashLiveContent(layer) == other.HashLiveContent(otherLayer);
        if (file.ColorMode != other.file.ColorMode || file.BitDepth != other.file.BitDepth || (painted.Width, painted.Height) != (otherPainted.Width, otherPainted.Height)) return false;
        using var rows = new PaintedRows(file, reader, layer, painted);
        using var otherRows = new PaintedRows(other.file, other.reader, otherLayer, otherPainted);
        if (!rows.Roles.SequenceEqual(otherRows.Roles)) return false;
        for (var y = 0; y < painted.Height; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            rows.ReadNext();
            otherRows.ReadNext();
            if ((rows.Start, rows.Count) != (otherRows.Start, otherRows.Count)) return false;
            for (var channel = 0; channel < rows.ChannelCount && rows.Count > 0; channel++)
            {
                if (!rows.Span(channel).SequenceEqual(otherRows.Span(channel))) return false;
            }
        }

        return true;
    }

    /// <summary>The fingerprint of a layer's effects; empty for one without any.</summary>
    public string ReadEffects(Layer layer) => Hash(layer.Detail.EffectContent);

    /// <summary>Whether colours of the file can be turned to RGB, so that pictures can be made and compared.</summary>
    public bool CanPaint => ColorConverter.CanConvert(file);

    /// <summary>The rows of a layer without its masks.</summary>
    public PartRows OpenRows(Layer layer) => new(file, reader, layer, converter.Value, masked: false);

    /// <summary>A coarse picture of a layer without its masks.</summary>
    /// <param name="layer">A layer that is no group.</param>
    /// <param name="shown">The rectangle to show, as if the layer stood where it stands.</param>
    /// <param name="side">Blocks along each side.</param>
    public CoarsePicture Paint(Layer layer, Bounds shown, int side)
    {
        var painter = new CoarsePainter(shown, side);
        using var rows = OpenRows(layer);
        while (rows.NextY < Math.Min(layer.Bounds.Bottom, shown.Bottom))
        {
            cancellation.ThrowIfCancellationRequested();
            var y = rows.NextY;
            var opacity = rows.ReadOpacity();
            if (y < shown.Top) rows.SkipColors();
            else painter.Add(y, layer.Bounds.Left, opacity, rows.ReadColors());
        }

        return painter.Complete();
    }

    public void Dispose()
    {
        reader.Dispose();
        opened.Dispose();
    }

    private Bounds FindPainted(Layer layer)
    {
        // Channels that store nothing take no time, however large their rectangle is.
        if (layer.Bounds.IsEmpty) return Bounds.Empty;
        if (layer.FindPlane(PlaneRole.Alpha) is not { } alpha) return layer.Planes.Exists(plane => plane.Role >= PlaneRole.Color0 && plane.Data.Length > 0) ? layer.Bounds : Bounds.Empty;
        if (alpha.Data.Length == 0) return Bounds.Empty;
        using var rows = new SampleRows(file, reader, layer, PlaneRole.Alpha, layer.Bounds);
        return rows.FindDiffering(layer.Bounds, 0, cancellation);
    }

    private string HashPixels(Layer layer, Bounds painted)
    {
        using var hash = new ContentHash();
        using var rows = new PaintedRows(file, reader, layer, painted);
        foreach (var number in new[] { (int)file.ColorMode, file.BitDepth, painted.Width, painted.Height }) hash.Add(number);
        foreach (var role in rows.Roles) hash.Add((int)role);
        for (var y = 0; y < painted.Height; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            rows.ReadNext();
            hash.Add(rows.Start);
            hash.Add(rows.Count);
            for (var channel = 0; channel < rows.ChannelCount && rows.Count > 0; channel++) hash.Add(rows.Row(channel), rows.Offset, rows.Count);
        }

        return hash.Complete();
    }

    private static string HashPlace(string shape, int right, int down)
    {
        using var hash = new ContentHash();
        var bytes = System.Text.Encoding.ASCII.GetBytes(shape);
        hash.Add(bytes, 0, bytes.Length);
        hash.Add(right);
        hash.Add(down);
        return hash.Complete();
    }

    private string HashLiveContent(Layer layer) => layer.Kind is LayerKind.Fill or LayerKind.Adjustment or LayerKind.Shape ? Hash(layer.Detail.LiveContent) : string.Empty;

    private string Hash(IReadOnlyList<ByteSource> sources)
    {
        if (sources.Count == 0) return string.Empty;
        using var hash = new ContentHash();
        foreach (var source in sources) hash.Add(source, opened);
        return hash.Complete();
    }
}
