using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Sheets.Parts;

/// <summary>Draws what cells are about. Can be used from several threads.</summary>
internal interface IPartPictures : IDisposable
{
    /// <summary>The pictures of a subject, from one reading of its pixels.</summary>
    /// <exception cref="LayeredFileException">The pixels cannot be read or drawn.</exception>
    IReadOnlyList<Raster> Draw(SheetSubject subject, IReadOnlyList<PictureTarget> targets, CancellationToken cancellation);

    /// <summary>The whole figure as small as asked: what the file shows, less backdrops, sketches and guides.</summary>
    /// <exception cref="LayeredFileException">It cannot be read or drawn.</exception>
    Raster DrawFigure(LayerFile file, PictureTarget target, CancellationToken cancellation);
}
