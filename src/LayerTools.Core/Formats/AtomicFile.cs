using LayerTools.Errors;

namespace LayerTools.Formats;

/// <summary>Writes a file beside its destination and puts it in place in one step, so that the destination is whole at every moment.</summary>
internal sealed class AtomicFile : IDisposable
{
    private readonly string destination;
    private bool committed;

    /// <param name="destination">Full path of the file to be.</param>
    public AtomicFile(string destination)
    {
        this.destination = destination;
        TemporaryPath = Path.Combine(Path.GetDirectoryName(destination)!, $".{Shorten(Path.GetFileName(destination))}.{Guid.NewGuid():N}.tmp");
    }

    public string TemporaryPath { get; }

    /// <summary>Writes the temporary file and has the disk confirm it.</summary>
    /// <param name="write">Writes the content.</param>
    /// <param name="length">Bytes to reserve, so that a full disk is noticed at the start.</param>
    public void Write(Action<FileStream> write, long length)
    {
        FileAccessErrors.Wrap(destination, () =>
        {
            FileAccessErrors.MakeFolderOf(destination);
            using var stream = Create(length);
            write(stream);
            stream.Flush(flushToDisk: true);
            return true;
        });
    }

    /// <summary>Takes a whole copy of a file, its rights and times included, as the temporary file.</summary>
    public void CopyFrom(string source)
    {
        FileAccessErrors.Wrap(destination, () =>
        {
            FileAccessErrors.MakeFolderOf(destination);
            File.Copy(source, TemporaryPath);
            return true;
        });
    }

    /// <summary>Puts the file in place.</summary>
    /// <param name="overwrite">Whether a file that is there may be replaced.</param>
    public void Commit(bool overwrite)
    {
        FileAccessErrors.Wrap(destination, () =>
        {
            if (overwrite && File.Exists(destination))
            {
                Replace();
            }
            else
            {
                File.Move(TemporaryPath, destination);
            }

            return committed = true;
        });
    }

    public void Dispose()
    {
        if (committed) return;
        try
        {
            File.Delete(TemporaryPath);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            // The first error is the one to tell; the leftover is named so that its origin is clear.
        }
    }

    /// <summary>The start of a name, so that the temporary file's name is not too long where the destination's just fits.</summary>
    private static string Shorten(string name)
    {
        const int Longest = 32;
        if (name.Length <= Longest) return name;
        return name.Substring(0, char.IsHighSurrogate(name[Longest - 1]) ? Longest - 1 : Longest);
    }

    private FileStream Create(long length)
    {
#if NET8_0_OR_GREATER
        const int CodeOfTheRuntime = unchecked((int)0x80131620);
        try
        {
            return new FileStream(TemporaryPath, new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 1, PreallocationSize = length });
        }
        catch (IOException error) when (error.HResult == CodeOfTheRuntime)
        {
            // The runtime tells a failed reservation, and nothing else here, in an error without the system's own code.
            throw new LayeredFileException(LayeredFileErrorKind.Unavailable, destination, "whole file", -1,
                FormattableString.Invariant($"The disk is full, or takes no file of {length} bytes."), "Free some space; the original is untouched.", error);
        }
#else
        var stream = new FileStream(TemporaryPath, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1);
        stream.SetLength(length);
        return stream;
#endif
    }

    private void Replace()
    {
#if NET8_0_OR_GREATER
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(TemporaryPath, File.GetUnixFileMode(destination));
        File.Move(TemporaryPath, destination, overwrite: true);
#else
        File.Replace(TemporaryPath, destination, null);
#endif
    }
}
