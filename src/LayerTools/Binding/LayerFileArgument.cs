using System.Management.Automation;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>What a user may give where one or several layered files are wanted: a file that was read, a path with or without wildcards, an item of the disk, or a folder of files.</summary>
internal static class LayerFileArgument
{
    /// <summary>The files that were read, or the paths to read, in the order given; those of a folder by name.</summary>
    /// <exception cref="RefusedException">It is none of these, or names nothing.</exception>
    public static IReadOnlyList<LayerFileReference> Find(PSCmdlet cmdlet, object argument) => (argument is PSObject wrapped ? wrapped.BaseObject : argument) switch
    {
        LayerFile file => [new LayerFileReference(file.Path, file)],
        FileSystemInfo item => FindOnDisk(item.FullName),
        string path => [.. PathResolver.Resolve(cmdlet, path).SelectMany(FindOnDisk)],
        var other => throw new RefusedException(ErrorRecords.NotALayer(cmdlet.MyInvocation.MyCommand.Name, other)),
    };

    /// <summary>Whether it names a folder, whose files are known by their names.</summary>
    /// <exception cref="RefusedException">It is a path that cannot be used.</exception>
    public static bool IsFolder(PSCmdlet cmdlet, object argument) => (argument is PSObject wrapped ? wrapped.BaseObject : argument) switch
    {
        DirectoryInfo => true,
        string path when !WildcardPattern.ContainsWildcardCharacters(path) => Directory.Exists(PathResolver.ResolveLiteral(cmdlet, path)),
        _ => false,
    };

    private static IReadOnlyList<LayerFileReference> FindOnDisk(string path)
    {
        if (!Directory.Exists(path)) return [new LayerFileReference(path, null)];
        var files = FileAccessErrors.Wrap(path, () => Directory.GetFiles(path));
        Array.Sort(files, StringComparer.Ordinal);
        return [.. files.Where(file => SavePlaces.FindFormat(file) is not null).Select(file => new LayerFileReference(file, null))];
    }
}
