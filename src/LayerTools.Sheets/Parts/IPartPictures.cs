using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Sheets.Parts;

/// <summary>Draws parts. Can be used from several threads.</summary>
internal interface IPartPictures : IDisposable
{
    /// <summary>The part alone, with its mask, at exactly the size asked for, which is nowhere larger than the part.</summary>
    /// <exception cref="LayeredFileException">The part's pixels cannot be read.</exception>
    Raster Draw(Layer part, int width, int height, CancellationToken cancellation);
}
