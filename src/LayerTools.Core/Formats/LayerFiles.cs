using LayerTools.Errors;
using LayerTools.Formats.Psd;
using LayerTools.Model;

namespace LayerTools.Formats;

/// <summary>Reads and writes layered files.</summary>
public static class LayerFiles
{
    /// <summary>Reads a file's tree: header, resources and layer records. Pixels stay on disk and no handle stays open.</summary>
    /// <param name="path">The file.</param>
    /// <param name="limits">Limits, or null for <see cref="ReadLimits.Default"/>.</param>
    /// <exception cref="LayeredFileException">The file cannot be read; names file, section and byte offset.</exception>
    public static LayerFile Read(string path, ReadLimits? limits = null) => PsdReader.Read(Path.GetFullPath(path), limits ?? ReadLimits.Default);

    /// <summary>Writes the file with its pending edits.</summary>
    /// <param name="file">The file.</param>
    /// <param name="destination">The path to write.</param>
    /// <param name="options">How to write.</param>
    /// <exception cref="LayeredFileException">Nothing was written, and what was there is untouched.</exception>
    public static SaveResult Save(LayerFile file, string destination, SaveOptions options) => new LayerFileSaver(file, Path.GetFullPath(destination), options).Save();

    /// <summary>Makes a blank file in memory; <see cref="Save"/> writes it.</summary>
    /// <param name="path">The path it will have; PSB for the extension .psb, else PSD.</param>
    /// <param name="options">What it is like.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side or the resolution is outside the format's range.</exception>
    public static LayerFile Create(string path, NewFileOptions options) => PsdNewFile.Create(Path.GetFullPath(path), options);
}
