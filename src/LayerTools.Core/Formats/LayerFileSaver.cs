using System.Globalization;
using System.Runtime.InteropServices;
using LayerTools.Errors;
using LayerTools.Formats.Psd;
using LayerTools.Model;

namespace LayerTools.Formats;

/// <summary>Saves a file: lays it out, writes a sibling, reads that back, and only then puts it in place.</summary>
internal sealed class LayerFileSaver(LayerFile file, string destination, SaveOptions options)
{
    private readonly List<string> warnings = [];

    public SaveResult Save()
    {
        if (options.InPlace && !file.IsAheadOfSource) return new SaveResult(file.Path, false, file.LayerCount, []);
        var target = FollowLinks(destination);
        CheckTarget(target);
        using var opened = new OpenedSources();
        using var atomic = new AtomicFile(target);
        var written = Write(atomic, opened);
        opened.Dispose();
        // Another program may have saved the file while this one was written.
        if (options.InPlace) file.Source!.Open().Dispose();
        BackUp(target);
        atomic.Commit(options.InPlace || options.Force);
        written.Source!.MoveTo(target);
        written.Path = destination;
        var standsForWritten = options.InPlace || file.Source is null;
        if (standsForWritten)
        {
            PsdRebinding.Rebind(file, written);
            file.Path = destination;
            file.EmptySpool();
        }

        file.MarkSaved(standsForWritten);
        return new SaveResult(destination, true, file.LayerCount, warnings);
    }

    private LayerFile Write(AtomicFile atomic, OpenedSources opened)
    {
        if (file.Source is not null) opened.Verify(file.Source);
        using var spool = new SpoolFile();
        var drawer = new PsdPictureDrawer(file, opened, spool);
        var picture = drawer.Draw();
        warnings.AddRange(drawer.Warnings);
        var output = PsdWriter.Layout(file, picture, PsdEncoding.KeepUnchanged);
        atomic.Write(stream => output.CopyTo(stream, opened), output.Length);
        // Limits protect against files of others; this one is ours.
        var written = PsdReader.Read(atomic.TemporaryPath, new ReadLimits { Layers = int.MaxValue, GroupDepth = int.MaxValue, PathMegabytes = int.MaxValue });
        if (PsdRebinding.FindDifference(file, written) is { } difference)
        {
            throw new LayeredFileException(LayeredFileErrorKind.Damaged, destination, "check after writing", -1, $"The file as written differs from what was to be written: {difference}.", "Nothing was replaced. Please report this with the file.");
        }

        return written;
    }

    private void CheckTarget(string target)
    {
        if (Directory.Exists(target)) throw Refuse("The destination is a folder.", "Name a file in it.");
        var isSource = file.Source is not null && (IsSamePath(target, FollowLinks(file.Source.Path)) || IsSameFile(target, file.Source.Path));
        if (options.InPlace && !isSource) throw Refuse("Saving in place writes to the file that was read, not elsewhere.", "Name a destination without -InPlace.");
        if (!options.InPlace && isSource) throw Refuse("The destination is the file that was read.", "Use -InPlace to replace it, or name another destination.");
        if (!options.InPlace && !options.Force && File.Exists(target)) throw Refuse("The destination exists.", "Use -Force to overwrite it, or name another destination.");
        // Putting a new file in its place would not even need the right to write to the old one on some systems.
        if (File.Exists(target) && (File.GetAttributes(target) & FileAttributes.ReadOnly) != 0) throw Refuse("The file is read-only.", "Lift its write protection, or name another destination.");
    }

    private void BackUp(string target)
    {
        if (options.BackupFolder is null || !File.Exists(target)) return;
        using var backup = new AtomicFile(ChooseBackupPath(target));
        backup.CopyFrom(target);
        backup.Commit(overwrite: false);
    }

    private string ChooseBackupPath(string target)
    {
        var folder = Path.GetFullPath(options.BackupFolder!);
        var stem = $"{Path.GetFileNameWithoutExtension(target)}-{DateTime.Now.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture)}";
        var path = Path.Combine(folder, stem + Path.GetExtension(target));
        for (var number = 2; File.Exists(path); number++)
        {
            path = Path.Combine(folder, FormattableString.Invariant($"{stem}-{number}{Path.GetExtension(target)}"));
        }

        return path;
    }

    private LayeredFileException Refuse(string problem, string remedy) => new(LayeredFileErrorKind.Unavailable, destination, "destination", -1, problem, remedy);

    private static bool IsSamePath(string one, string other)
    {
        // Where a volume might take two spellings for one file, they count as one: refusing too much costs a name, refusing too little an original.
        var ignoresCase = !RuntimeInformation.IsOSPlatform(OSPlatform.Linux);
        return string.Equals(Path.GetFullPath(one), Path.GetFullPath(other), ignoresCase ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal);
    }

    /// <summary>Whether two paths lead to one file, told by locking it; needed only where links in folders cannot be followed.</summary>
    private static bool IsSameFile(string one, string other)
    {
#if NET8_0_OR_GREATER
        return false;
#else
        if (!File.Exists(one) || !File.Exists(other)) return false;
        try
        {
            using var locked = new FileStream(one, FileMode.Open, FileAccess.Read, FileShare.None);
            try
            {
                new FileStream(other, FileMode.Open, FileAccess.Read, FileShare.ReadWrite).Dispose();
                return false;
            }
            catch (IOException)
            {
                return true;
            }
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            // A file that cannot be locked cannot be replaced either, which the save will tell.
            return false;
        }
#endif
    }

    /// <summary>Writing through a link replaces the file it leads to, not the link; and a folder on the way may be a link as well.</summary>
    private static string FollowLinks(string path)
    {
#if NET8_0_OR_GREATER
        return FileAccessErrors.Wrap(path, () => FollowEachLink(path));
#else
        if (!File.Exists(path)) return path;
        // This framework cannot say where a link leads.
        return (File.GetAttributes(path) & FileAttributes.ReparsePoint) == 0 ? path : throw new LayeredFileException(LayeredFileErrorKind.Unavailable, path, "destination", -1, "The path is a link.", "Name the file that it leads to.");
#endif
    }

#if NET8_0_OR_GREATER
    private static string FollowEachLink(string path)
    {
        var followed = Path.GetPathRoot(path)!;
        foreach (var segment in path.Substring(followed.Length).Split([Path.DirectorySeparatorChar], StringSplitOptions.RemoveEmptyEntries))
        {
            followed = Path.Combine(followed, segment);
            FileSystemInfo entry = Directory.Exists(followed) ? new DirectoryInfo(followed) : new FileInfo(followed);
            if (entry.Exists && entry.ResolveLinkTarget(returnFinalTarget: true) is { } end) followed = FollowEachLink(end.FullName);
        }

        return followed;
    }
#endif
}
