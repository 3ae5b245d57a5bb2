using System.Security.Cryptography;
using LayerTools.Errors;

namespace LayerTools.Model;

/// <summary>A file on disk as it was when it was read: every later read first makes sure that it still is the same.</summary>
internal sealed class SourceFile
{
    private IReadOnlyList<(long Offset, long Length)> watched = [];
    private DateTime lastWrite;
    private byte[] hash = [];

    public SourceFile(string path) => Path = path;

    public string Path { get; private set; }

    public long Length { get; private set; }

    /// <summary>Remembers the state of the open file.</summary>
    /// <param name="stream">The file, open for reading.</param>
    /// <param name="ranges">The bytes whose content is remembered: all that is not pixels.</param>
    public void Remember(FileStream stream, IReadOnlyList<(long Offset, long Length)> ranges)
    {
        Length = stream.Length;
        lastWrite = File.GetLastWriteTimeUtc(Path);
        watched = ranges;
        hash = Hash(stream, ranges);
    }

    /// <summary>Says that the same bytes now have another name.</summary>
    public void MoveTo(string path) => Path = path;

    /// <summary>Opens the file for reading.</summary>
    /// <exception cref="LayeredFileException">The file is not the one that was read, or cannot be opened.</exception>
    public FileStream Open()
    {
        var stream = FileAccessErrors.Wrap(Path, () => new FileStream(Path, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, 1, FileOptions.RandomAccess));
        try
        {
            if (stream.Length != Length || File.GetLastWriteTimeUtc(Path) != lastWrite || !Hash(stream, watched).AsSpan().SequenceEqual(hash))
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
