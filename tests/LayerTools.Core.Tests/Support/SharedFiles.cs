namespace LayerTools.Tests.Support;

/// <summary>Layered files that tests read: the repository's own fixtures, and real ones in a folder 'shared' beside or above the repository.</summary>
internal static class SharedFiles
{
    /// <summary>Why a test is skipped that needs the real files.</summary>
    public const string Missing = "The folder 'shared' with real files is not here.";

    private static readonly string? Folder = FindAbove("shared");

    /// <summary>The sound fixtures; those in 'damaged' are not among them.</summary>
    public static IReadOnlyList<string> Fixtures { get; } =
        [.. LayeredIn(FindAbove(Path.Combine("tests", "Fixtures"))).Where(path => Path.GetFileName(Path.GetDirectoryName(path)) != "damaged")];

    /// <summary>The fixtures that are damaged on purpose.</summary>
    public static IReadOnlyList<string> Damaged { get; } = LayeredIn(FindAbove(Path.Combine("tests", "Fixtures", "damaged")));

    /// <summary>All sound files there are: fixtures and real ones.</summary>
    public static IReadOnlyList<string> All => [.. Fixtures, .. FindLayered("corpus"), .. FindLayered("models")];

    /// <summary>The full path of a real file; null if it is not there.</summary>
    public static string? Find(string relativePath) => Folder is not null && Path.Combine(Folder, relativePath) is var path && File.Exists(path) ? path : null;

    /// <summary>All real files in a folder of 'shared' and below; none if it is not there.</summary>
    public static IReadOnlyList<string> FindLayered(string relativePath) => LayeredIn(Folder is null ? null : Path.Combine(Folder, relativePath));

    /// <summary>The full path of a published schema among the fixtures.</summary>
    public static string FindSchema(string name) => Path.Combine(FindFolder(Path.Combine("tests", "Fixtures", "schemas")), name);

    /// <summary>The full path of a folder of the repository.</summary>
    public static string FindFolder(string relativePath) => FindAbove(relativePath) ?? throw new DirectoryNotFoundException(relativePath);

    private static string[] LayeredIn(string? folder) => folder is null || !Directory.Exists(folder)
        ? []
        : [.. Directory.EnumerateFiles(folder, "*.ps?", SearchOption.AllDirectories).Where(IsLayered).Order(StringComparer.Ordinal)];

    private static bool IsLayered(string path) => Path.GetExtension(path).ToUpperInvariant() is ".PSD" or ".PSB";

    private static string? FindAbove(string name)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var candidate = Path.Combine(folder.FullName, name);
            if (Directory.Exists(candidate)) return candidate;
        }

        return null;
    }
}
