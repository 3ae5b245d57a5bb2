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
            if (!streams.TryGetValue(file, out var stream))
            {
                stream = file.Open();
                streams.Add(file, stream);
            }

            stream.Position = offset;
            if (!StreamReading.TryFill(stream, buffer))
            {
                throw new LayeredFileException(LayeredFileErrorKind.SourceChanged, file.Path, "whole file", offset,
                    "The file became shorter while it was read.", "Read it again with Get-LayerFile.");
            }
        }
    }

    public void Dispose()
    {
        foreach (var stream in streams.Values) stream.Dispose();
        streams.Clear();
    }
}
