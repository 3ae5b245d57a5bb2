using System.Management.Automation;

namespace LayerTools.Binding;

/// <summary>The files of an older delivery, and which of them a new file has to be compared with.</summary>
internal sealed class DeliveryFiles
{
    private readonly IReadOnlyList<LayerFileReference> files;
    private readonly HashSet<LayerFileReference> used = [];
    private readonly bool isFolder;

    private DeliveryFiles(IReadOnlyList<LayerFileReference> files, bool isFolder) => (this.files, this.isFolder) = (files, isFolder);

    /// <summary>Those that nothing was compared with.</summary>
    public IEnumerable<LayerFileReference> Unused => files.Where(file => !used.Contains(file));

    /// <summary>The files that an argument names.</summary>
    /// <exception cref="RefusedException">It names no layered files.</exception>
    public static DeliveryFiles Find(PSCmdlet cmdlet, object argument)
    {
        var files = LayerFileArgument.Find(cmdlet, argument);
        if (files.Count == 0) throw new RefusedException(ErrorRecords.BadArgument("NoFiles", $"{argument}: There are no layered files here. Name a PSD or PSB, or a folder with some.", argument));
        return new DeliveryFiles(files, LayerFileArgument.IsFolder(cmdlet, argument));
    }

    /// <summary>The only file there is, else the one of the same name, be it a PSD or a PSB; null if there is none.</summary>
    public LayerFileReference? Take(string path)
    {
        var found = files.Count == 1 && !isFolder
            ? files[0]
            : files.FirstOrDefault(file => IsNamed(file.Path, path, Path.GetFileName)) ?? files.FirstOrDefault(file => IsNamed(file.Path, path, Path.GetFileNameWithoutExtension));
        if (found is not null) used.Add(found);
        return found;
    }

    private static bool IsNamed(string one, string other, Func<string, string?> part) => string.Equals(part(one), part(other), StringComparison.OrdinalIgnoreCase);
}
