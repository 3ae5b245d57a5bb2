using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Sheets.Parts;

/// <summary>Draws whole files, one at a time, as each shows itself.</summary>
internal sealed class FilePictures : IPartPictures
{
    private readonly object compositing = new();

    public IReadOnlyList<Raster> Draw(SheetSubject subject, IReadOnlyList<PictureTarget> targets, CancellationToken cancellation)
    {
        lock (compositing)
        {
            using var reader = new PixelReader(subject.File);
            return CompositePictures.Draw(subject.File, reader, subject.Bounds, new CompositeOptions { Cancellation = cancellation }, targets);
        }
    }

    public Raster DrawFigure(LayerFile file, PictureTarget target, CancellationToken cancellation) =>
        Draw(SheetSubject.ForFile(file), [target], cancellation)[0];

    public void Dispose()
    {
    }
}
