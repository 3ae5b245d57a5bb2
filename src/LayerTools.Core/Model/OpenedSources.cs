using LayerTools.Errors;

namespace LayerTools.Model;

/// <summary>The source files opened during one operation: each is checked once, when it is first read.</summary>
internal sealed class OpenedSources : IDisposable
{
    private readonly Dictionary<SourceFile, FileStream> streams = [];

    public void Read(SourceFile file, long offset, Span<byte> buffer)
    {
        lock (streams)
        {
            var stream = Open(file);
            stream.Position = offset;
            if (!StreamReading.TryFill(stream, buffer))
            {
                throw new LayeredFileException(LayeredFileErrorKind.SourceChanged, file.Path, "whole file", offset,
                    "The file became shorter while it was read.", "Read it again with Get-LayerFile.");
            }
        }
    }

    /// <summary>Makes sure that the file still is as it was read.</summary>
    public void Verify(SourceFile file)
    {
        lock (streams) Open(file);
    }

    public void Dispose()
    {
        foreach (var stream in streams.Values) stream.Dispose();
        streams.Clear();
    }

    private FileStream Open(SourceFile file)
    {
        if (!streams.TryGetValue(file, out var stream))
        {
            stream = file.Open();
            streams.Add(file, stream);
        }

        return stream;
    }
}
