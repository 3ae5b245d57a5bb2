using LayerTools.Errors;
using LayerTools.Formats;

namespace LayerTools.Images;

/// <summary>Files that belong together: all are written beside their places first, and then put in place. Disposed before, nothing stays.</summary>
internal sealed class ImageFolder : IDisposable
{
    private readonly AtomicFile[] files;
    private readonly string[] paths;
    private readonly bool overwrite;

    /// <param name="paths">Full paths of the files to be.</param>
    /// <param name="overwrite">Whether files that are there may be replaced.</param>
    /// <exception cref="LayeredFileException">A path is taken.</exception>
    public ImageFolder(IEnumerable<string> paths, bool overwrite)
    {
        this.paths = [.. paths];
        this.overwrite = overwrite;
        if (Array.Find(this.paths, Directory.Exists) is { } folder) throw Refuse(folder, "This is a folder.", "Name another destination.");
        var existing = overwrite ? [] : Array.FindAll(this.paths, File.Exists);
        if (existing.Length > 0)
        {
            var more = existing.Length > 1 ? FormattableString.Invariant($", and so do {existing.Length - 1} more") : string.Empty;
            throw Refuse(existing[0], $"The file exists{more}.", "Use -Force to overwrite, or name another destination.");
        }

        files = Array.ConvertAll(this.paths, path => new AtomicFile(path));
    }

    /// <summary>Writes a file beside its place. Different files can be written from several threads.</summary>
    public void Write(int index, Action<Stream> write) => files[index].Write(write, 0);

    public void Write(int index, byte[] bytes) => Write(index, stream => stream.Write(bytes, 0, bytes.Length));

    /// <summary>Puts the files in place, in their order.</summary>
    public IReadOnlyList<string> Commit()
    {
        foreach (var file in files) file.Commit(overwrite);
        return paths;
    }

    public void Dispose()
    {
        foreach (var file in files) file.Dispose();
    }

    private static LayeredFileException Refuse(string path, string problem, string remedy) => new(LayeredFileErrorKind.Unavailable, path, "destination", -1, problem, remedy);
}
