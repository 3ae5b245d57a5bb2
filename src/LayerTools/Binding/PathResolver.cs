using System.Management.Automation;

namespace LayerTools.Binding;

/// <summary>Turns what a user typed or piped into paths on disk. The session's location counts, not the process's.</summary>
internal static class PathResolver
{
    private const string FileSystem = "FileSystem";

    /// <summary>The files that a path stands for; with wildcards perhaps none.</summary>
    /// <exception cref="RefusedException">The path names nothing, or nothing on disk.</exception>
    public static IReadOnlyList<string> Resolve(PSCmdlet cmdlet, string path)
    {
        var resolved = Guard(path, () =>
        {
            var found = cmdlet.SessionState.Path.GetResolvedProviderPathFromPSPath(path, out var provider);
            CheckProvider(path, provider);
            return found;
        });
        // A wildcard means the files among what it matches; a folder named outright is left for the reader to refuse.
        return WildcardPattern.ContainsWildcardCharacters(path) ? resolved.Where(found => !Directory.Exists(found)).ToList() : resolved;
    }

    /// <summary>The path on disk, existing or not, with every character meant as it stands.</summary>
    /// <exception cref="RefusedException">The path is not one on disk.</exception>
    public static string ResolveLiteral(PSCmdlet cmdlet, string path) => ResolveLiteral(cmdlet.SessionState, path);

    /// <inheritdoc cref="ResolveLiteral(PSCmdlet, string)"/>
    public static string ResolveLiteral(SessionState session, string path) => Guard(path, () =>
    {
        var found = session.Path.GetUnresolvedProviderPathFromPSPath(path, out var provider, out _);
        CheckProvider(path, provider);
        return found;
    });

    private static void CheckProvider(string path, ProviderInfo provider)
    {
        if (!string.Equals(provider.Name, FileSystem, StringComparison.Ordinal)) throw new RefusedException(ErrorRecords.NotAFilePath(path, provider.Name));
    }

    private static T Guard<T>(string path, Func<T> resolve)
    {
        try
        {
            return resolve();
        }
        catch (ItemNotFoundException)
        {
            throw new RefusedException(ErrorRecords.PathNotFound(path));
        }
        catch (SessionStateException error)
        {
            throw new RefusedException(ErrorRecords.PathUnusable(path, error));
        }
        catch (Exception error) when (error is ArgumentException or NotSupportedException or ProviderInvocationException or WildcardPatternException)
        {
            throw new RefusedException(ErrorRecords.PathUnusable(path, error));
        }
    }
}
