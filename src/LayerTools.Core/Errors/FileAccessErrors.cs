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

    /// <summary>Makes the folder that a file is to be written to.</summary>
    /// <param name="destination">The file, as a full path.</param>
    /// <exception cref="LayeredFileException">There is a file in the way, or the operating system refused.</exception>
    public static void MakeFolderOf(string destination) => Wrap(destination, () =>
    {
        var folder = Path.GetDirectoryName(destination)!;
        for (var outer = folder; !string.IsNullOrEmpty(outer); outer = Path.GetDirectoryName(outer))
        {
            if (File.Exists(outer)) throw Refuse(destination, $"'{outer}' is a file, and would have to be a folder.");
        }

        try
        {
            return Directory.CreateDirectory(folder);
        }
        catch (IOException error) when (error is DirectoryNotFoundException or FileNotFoundException)
        {
            throw Refuse(destination, $"The folder '{folder}' cannot be made.", error);
        }
    });

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

    private static LayeredFileException Refuse(string destination, string problem, Exception? error = null) =>
        new(LayeredFileErrorKind.Unavailable, destination, "destination", -1, problem, "Name another folder.", error);

    private static LayeredFileException Create(Exception error, string path, string problem, string remedy) =>
        new(LayeredFileErrorKind.Unavailable, path, "whole file", -1, problem, remedy, error);
}
