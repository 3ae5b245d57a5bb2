using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>Where the files of one command are written, each place once.</summary>
internal sealed class SavePlaces
{
    // Some disks tell Hero.psd from hero.psd and some do not; taking them for one is the safe side.
    // Only paths are kept: a nightly run over thousands of files must not hold on to their models.
    private readonly Dictionary<string, string> taken = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The format that a file's name says; null if it says none.</summary>
    public static FileFormat? FindFormat(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".PSD" => FileFormat.Psd,
        ".PSB" => FileFormat.Psb,
        _ => null,
    };

    /// <summary>The path to write a file to.</summary>
    /// <param name="destination">A file, if it ends like a layered file and is no folder; a folder otherwise.</param>
    /// <param name="file">The file to write.</param>
    /// <exception cref="RefusedException">The destination's name says another format than the file has.</exception>
    public static string Locate(string destination, LayerFile file)
    {
        if (FindFormat(destination) is not { } format || Directory.Exists(destination)) return Path.GetFullPath(Path.Combine(destination, file.Name));
        // A file whose own name is wrong may keep it.
        if (format != file.Format && format != FindFormat(file.Path)) throw new RefusedException(ErrorRecords.OtherFormat(destination, file));
        return Path.GetFullPath(destination);
    }

    /// <summary>The path to write a picture of a file to.</summary>
    /// <param name="destination">A file, if it has an extension and is no folder; else a folder, where the picture is called like the file.</param>
    /// <param name="file">The file that is shown.</param>
    public static string LocatePicture(string destination, LayerFile file) =>
        Path.GetExtension(destination).Length > 0 && !Directory.Exists(destination)
            ? Path.GetFullPath(destination)
            : Path.GetFullPath(Path.Combine(destination, Path.GetFileNameWithoutExtension(file.Name) + ".png"));

    /// <summary>The path to write a picture of a file to, see <see cref="LocatePicture"/>.</summary>
    /// <exception cref="RefusedException">It ends like another kind of file than PNG.</exception>
    public static string LocatePng(string destination, LayerFile file)
    {
        var path = LocatePicture(destination, file);
        if (Path.GetExtension(path).Equals(".png", StringComparison.OrdinalIgnoreCase)) return path;
        throw new RefusedException(ErrorRecords.BadArgument("NotAPicture", $"{path}: Pictures are written as PNG. Let the path end in .png, or make the folder of this name first.", path));
    }

    /// <summary>Notes that a file is written to a place.</summary>
    /// <exception cref="RefusedException">Another one already was.</exception>
    public void Claim(string destination, LayerFile file)
    {
        if (taken.TryGetValue(destination, out var first)) throw new RefusedException(ErrorRecords.DestinationTaken(destination, first, file));
        taken.Add(destination, file.Path);
    }

    /// <summary>Makes the folder a file is to be written to.</summary>
    /// <exception cref="LayeredFileException">The operating system refused.</exception>
    public static void MakeFolder(string destination) =>
        FileAccessErrors.MakeFolderOf(destination);
}
