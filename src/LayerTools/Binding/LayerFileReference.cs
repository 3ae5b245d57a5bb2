using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>A layered file that was read, or one on disk that is read when it is needed.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="File">The file, if it was read.</param>
internal sealed record LayerFileReference(string Path, LayerFile? File)
{
    /// <summary>Reads the file unless it was read.</summary>
    /// <param name="limits">Limits of reading; null for the usual ones.</param>
    /// <exception cref="Errors.LayeredFileException">The file cannot be read.</exception>
    public LayerFile Open(ReadLimits? limits = null) => File ?? LayerFiles.Read(Path, limits ?? ReadLimits.Default);
}
