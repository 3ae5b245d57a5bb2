using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Masks;
using LayerTools.Pixels.Parts;

namespace LayerTools.Measures.Survey;

/// <summary>Reads the alpha of parts as their masks leave it. Can be used from several threads.</summary>
internal sealed class PartAlpha(LayerFile file, PixelReader reader, CancellationToken cancellation)
{
    private readonly DescribedContent described = new(file);

    /// <summary>Reads a part.</summary>
    /// <param name="layer">The part.</param>
    /// <param name="scanner">Takes its rows; those that are clear may be left out.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the layer is larger than any canvas, the file changed on disk, or its colours cannot be drawn.</exception>
    public void Read(Layer layer, PartScanner scanner)
    {
        var area = layer.Bounds;
        if ((long)area.Right - area.Left > AreaReducer.LargestSide || (long)area.Bottom - area.Top > AreaReducer.LargestSide)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"layer '{layer.LayerPath}'", -1,
                FormattableString.Invariant($"Its rectangle has a side of more than {AreaReducer.LargestSide} px."), "Cut the layer to what is painted.");
        }

        if (described.Has(layer)) Draw(layer, area.Union(new Bounds(0, 0, file.Width, file.Height)), scanner);
        else if (area.IsEmpty || !layer.Planes.Exists(plane => plane.Role >= PlaneRole.Color0)) return;
        else if (LayerMasks.Find(layer) is { Stored: null or { Feather: <= 0 }, Path: null }) ReadStored(layer, scanner);
        else Draw(layer, area, scanner);
    }

    /// <summary>Where no path and no blur has to be drawn, colours need not be unpacked.</summary>
    private void ReadStored(Layer layer, PartScanner scanner)
    {
        using var rows = new PartRows(file, reader, layer, converter: null);
        for (var row = 0; row < layer.Bounds.Height; row++)
        {
            cancellation.ThrowIfCancellationRequested();
            var y = rows.NextY;
            scanner.Add(y, layer.Bounds.Left, rows.ReadOpacity());
        }
    }

    private void Draw(Layer layer, Bounds area, PartScanner scanner)
    {
        var reach = Create(area).FindReach();
        if (!reach.IsEmpty) Create(reach).RenderRows((_, _) => new DrawnAlpha(reach, scanner));

        // The parts themselves are spread over the processors, so that each is drawn by one thread.
        Compositor Create(Bounds drawn) => new(file, reader, new CompositeOptions { Subject = layer, Plain = true, Area = drawn, Threads = 1, Cancellation = cancellation });
    }
}
