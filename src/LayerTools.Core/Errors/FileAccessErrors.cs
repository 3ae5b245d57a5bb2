namespace LayerTools.Errors;

/// <summary>Tells what the operating system refused in the words of <see cref="LayeredFileException"/>.</summary>
internal static class FileAccessErrors
{
    private const int DiskFullWindows = unchecked((int)0x80070070);
    private const int HandleDiskFullWindows = unchecked((int)0x80070027);
    private const int NoSpaceUnix = 28;

    public static T Wrap<T>(string path, Func<T> action)
    {
        try
        {
            return action();
        }
        catch (Exception error) when (TryDescribe(error, path) is { } described)
        {
            throw described;
        }
    }

    public static LayeredFileException? TryDescribe(Exception error, string path) => error switch
    {
        LayeredFileException => null,
        FileNotFoundException or DirectoryNotFoundException => Create(error, path, "The file does not exist.", "Check the path."),
        UnauthorizedAccessException when Directory.Exists(path) => Create(error, path, "This is a folder.", "Name the files in it, for example with a wildcard."),
        UnauthorizedAccessException => Create(error, path, "Access was denied.", "Check the file's permissions and whether it is read-only."),
        PathTooLongException => Create(error, path, "The path is too long.", "Move the file to a shorter path."),
        IOException io when IsDiskFull(io) => Create(error, path, "The disk is full.", "Free some space; the original is untouched."),
        IOException => Create(error, path, $"The file cannot be opened, read or written: {error.Message}", "Close the program that uses it, or try again later."),
        _ => null,
    };

    private static bool IsDiskFull(IOException error) => error.HResult is DiskFullWindows or HandleDiskFullWindows or NoSpaceUnix;

    private static LayeredFileException Create(Exception error, string path, string problem, string remedy) =>
        new(LayeredFileErrorKind.Unavailable, path, "whole file", -1, problem, remedy, error);
}
