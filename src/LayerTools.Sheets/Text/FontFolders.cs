using System.Runtime.InteropServices;

namespace LayerTools.Sheets.Text;

/// <summary>The font files of this machine, by looking where each system keeps them.</summary>
internal static class FontFolders
{
    private static readonly string[] Extensions = [".ttf", ".otf", ".ttc", ".otc"];

    /// <summary>Paths of all font files, in an order that depends on nothing but their paths.</summary>
    public static IReadOnlyList<string> ListFiles() => FindFolders()
        .Where(folder => folder.Length > 0)
        .Distinct(StringComparer.Ordinal)
        .SelectMany(folder => ListFiles(folder))
        .Where(path => Extensions.Contains(Path.GetExtension(path), StringComparer.OrdinalIgnoreCase))
        .OrderBy(path => path, StringComparer.Ordinal)
        .ToList();

    private static IEnumerable<string> FindFolders()
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        if (RuntimeInformation.IsOSPlatform(OSPlatform.Windows))
        {
            yield return Environment.GetFolderPath(Environment.SpecialFolder.Fonts);
            var local = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData);
            if (local.Length > 0) yield return Path.Combine(local, "Microsoft", "Windows", "Fonts");
        }
        else if (RuntimeInformation.IsOSPlatform(OSPlatform.OSX))
        {
            yield return "/System/Library/Fonts";
            yield return "/Library/Fonts";
            if (home.Length > 0) yield return Path.Combine(home, "Library", "Fonts");
        }
        else
        {
            yield return "/usr/share/fonts";
            yield return "/usr/local/share/fonts";
            if (home.Length > 0) yield return Path.Combine(home, ".local", "share", "fonts");
            if (home.Length > 0) yield return Path.Combine(home, ".fonts");
        }
    }

    /// <summary>Files at any depth; folders that cannot be read hold no fonts for us. Links to folders are not followed, since they may form circles.</summary>
    private static IEnumerable<string> ListFiles(string folder)
    {
        var waiting = new Stack<DirectoryInfo>();
        waiting.Push(new DirectoryInfo(folder));
        while (waiting.Count > 0)
        {
            FileSystemInfo[] entries;
            try
            {
                entries = waiting.Pop().GetFileSystemInfos();
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                continue;
            }

            foreach (var entry in entries)
            {
                if (entry is DirectoryInfo inner && (inner.Attributes & FileAttributes.ReparsePoint) == 0) waiting.Push(inner);
                else if (entry is FileInfo) yield return entry.FullName;
            }
        }
    }
}
