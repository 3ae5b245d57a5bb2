using System.Security.Cryptography;
using LayerTools.Errors;

namespace LayerTools.Model;

/// <summary>A file on disk as it was when it was read: every later read first makes sure that it still is the same.</summary>
internal sealed class SourceFile
{
    private readonly long length;
    private readonly DateTime lastWrite;
    private readonly IReadOnlyList<(long Offset, long Length)> watched;
    private readonly byte[] hash;

    private SourceFile(string path, long length, DateTime lastWrite, IReadOnlyList<(long, long)> watched, byte[] hash)
    {
        Path = path;
        this.length = length;
        this.lastWrite = lastWrite;
        this.watched = watched;
        this.hash = hash;
    }

    public string Path { get; }

    public long Length => length;

    /// <summary>Remembers an open file.</summary>
    /// <param name="stream">The file, open for reading.</param>
    /// <param name="path">Its full path.</param>
    /// <param name="watched">The ranges, in bytes, whose content is remembered: all that is not pixels.</param>
    public static SourceFile Remember(FileStream stream, string path, IReadOnlyList<(long Offset, long Length)> watched) =>
        new(path, stream.Length, File.GetLastWriteTimeUtc(path), watched, Hash(stream, watched));

    /// <summary>Opens the file for reading.</summary>
    /// <exception cref="LayeredFileException">The file is not the one that was read, or cannot be opened.</exception>
    public FileStream Open()
    {
        var stream = FileAccessErrors.Wrap(Path, () => new FileStream(Path, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, 1, FileOptions.RandomAccess));
        try
        {
            if (stream.Length != length || File.GetLastWriteTimeUtc(Path) != lastWrite || !Hash(stream, watched).AsSpan().SequenceEqual(hash))
            {
                throw new LayeredFileException(LayeredFileErrorKind.SourceChanged, Path, "whole file", -1,
                    "The file changed on disk since it was read.", "Read it again with Get-LayerFile and repeat the edits.");
            }

            return stream;
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    private static byte[] Hash(FileStream stream, IReadOnlyList<(long Offset, long Length)> ranges)
    {
        var buffer = System.Buffers.ArrayPool<byte>.Shared.Rent(1 << 16);
        try
        {
            using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            foreach (var (offset, length) in ranges)
            {
                stream.Position = offset;
                for (var left = length; left > 0;)
                {
                    var count = stream.Read(buffer, 0, (int)Math.Min(left, buffer.Length));
                    if (count == 0) break;
                    hash.AppendData(buffer, 0, count);
                    left -= count;
                }
            }

            return hash.GetHashAndReset();
        }
        finally
        {
            System.Buffers.ArrayPool<byte>.Shared.Return(buffer);
        }
    }
}
