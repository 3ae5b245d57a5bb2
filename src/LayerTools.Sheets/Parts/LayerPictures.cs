using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Parts;

namespace LayerTools.Sheets.Parts;

/// <summary>Draws layers of a file row by row, so that memory goes with a layer's width and not with its area.</summary>
internal sealed class LayerPictures : IPartPictures
{
    private readonly LayerFile file;
    private readonly PixelReader reader;
    private readonly object compositing = new();
    private ColorConverter? converter;

    public LayerPictures(LayerFile file)
    {
        this.file = file;
        reader = new PixelReader(file);
    }

    public IReadOnlyList<Raster> Draw(SheetSubject subject, IReadOnlyList<PictureTarget> targets, CancellationToken cancellation)
    {
        if (subject.Layer is { IsGroup: false } part) return Draw(part, targets, cancellation);
        // Drawing layers together takes all processors by itself.
        lock (compositing) return CompositePictures.Draw(file, reader, subject.Bounds, new CompositeOptions { Subject = subject.Layer, Cancellation = cancellation }, targets);
    }

    public Raster DrawFigure(LayerFile file, PictureTarget target, CancellationToken cancellation)
    {
        lock (compositing)
        {
            var options = new CompositeOptions { Shows = new PartRoles(file).IsShown, Cancellation = cancellation };
            return CompositePictures.Draw(file, reader, target.Frame, options, [target])[0];
        }
    }

    /// <summary>The part alone, with its mask, at exactly the size asked for, which is nowhere larger than the part.</summary>
    public Raster Draw(Layer part, int width, int height, CancellationToken cancellation) => Draw(part, [new PictureTarget(part.Bounds, width, height)], cancellation)[0];

    public void Dispose() => reader.Dispose();

    private List<Raster> Draw(Layer part, IReadOnlyList<PictureTarget> targets, CancellationToken cancellation)
    {
        SampleConverter.EnsureSupported(file, $"layer '{part.LayerPath}'");
        var bounds = part.Bounds;
        // An alpha channel that stores nothing is transparent throughout, however large its rectangle says it is.
        if (part.FindPlane(PlaneRole.Alpha) is { Data.Length: 0 }) return [.. targets.Select(target => new Raster(target.Width, target.Height))];
        using var rows = new PartRows(file, reader, part, converter ??= reader.CreateConverter());
        var reducers = targets.Select(target => new FrameReducer(target, bounds)).ToList();
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            var opacity = rows.ReadOpacity();
            if (IsBlank(opacity))
            {
                rows.SkipColors();
                foreach (var reducer in reducers) reducer.AddBlankRow();
            }
            else
            {
                var colors = rows.ReadColors();
                foreach (var reducer in reducers) reducer.AddRow(colors.Red, colors.Green, colors.Blue, opacity);
            }
        }

        return reducers.ConvertAll(reducer => reducer.Finish());
    }

    private static bool IsBlank(ReadOnlySpan<byte> opacity)
    {
#if NET8_0_OR_GREATER
        return opacity.IndexOfAnyExcept((byte)0) < 0;
#else
        foreach (var sample in opacity)
        {
            if (sample != 0) return false;
        }

        return true;
#endif
    }
}
