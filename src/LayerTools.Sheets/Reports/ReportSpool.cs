using System.Text;
using LayerTools.Errors;

namespace LayerTools.Sheets.Reports;

/// <summary>Keeps pieces of a page in a temporary file until the page is put together.</summary>
internal sealed class ReportSpool : IDisposable
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private FileStream? stream;

    /// <summary>Adds a piece and tells where it lies.</summary>
    /// <exception cref="LayeredFileException">The temporary folder cannot be written to.</exception>
    public ReportPiece Write(Action<HtmlWriter> write)
    {
        var place = Path.GetTempPath();
        return FileAccessErrors.Wrap(place, () =>
        {
            stream ??= new FileStream(Path.Combine(place, $"layertools-{Guid.NewGuid():N}.tmp"), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose);
            var start = stream.Seek(0, SeekOrigin.End);
            using (var writer = new StreamWriter(stream, Utf8, 1 << 14, leaveOpen: true)) write(new HtmlWriter(writer));
            return new ReportPiece(start, stream.Position - start);
        });
    }

    /// <summary>Copies a piece.</summary>
    public void CopyTo(ReportPiece piece, Stream target)
    {
        stream!.Position = piece.Start;
        var buffer = new byte[1 << 16];
        for (var left = piece.Length; left > 0;)
        {
            var count = stream.Read(buffer, 0, (int)Math.Min(left, buffer.Length));
            if (count == 0) throw new EndOfStreamException();
            target.Write(buffer, 0, count);
            left -= count;
        }
    }

    public void Dispose() => stream?.Dispose();
}
