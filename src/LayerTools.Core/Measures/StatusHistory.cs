using System.Globalization;
using System.Text;
using LayerTools.Errors;

namespace LayerTools.Measures;

/// <summary>
/// Keeps one line of sums for each run in a CSV file (RFC 4180: commas, CRLF, one line of headers), so that progress over days can be drawn. Numbers and times are invariant.
/// Columns: Time (UTC, 2026-03-01T09:30:00Z), Files, Parts, Done, Recheck, Open, Unknown, Missing, SharePercent (done of the parts of which it is known, two digits; empty where of none).
/// </summary>
internal static class StatusHistory
{
    public const string Header = "Time,Files,Parts,Done,Recheck,Open,Unknown,Missing,SharePercent";

    private const int WaitMilliseconds = 50;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    /// <summary>Appends a line; makes the file if there is none. Two runs that append at once wait for each other.</summary>
    /// <param name="path">Full path of the file.</param>
    /// <param name="sum">The sum of everything.</param>
    /// <param name="files">How many files it is of.</param>
    /// <param name="time">When it was made, UTC.</param>
    /// <param name="cancellation">Stops the waiting.</param>
    /// <exception cref="LayeredFileException">The file has other columns, or the operating system refused; it is as it was.</exception>
    public static void Append(string path, StatusSummary sum, int files, DateTime time, CancellationToken cancellation) => FileAccessErrors.Wrap(path, () =>
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var stream = Open(path, cancellation);
        var separator = stream.Length == 0 ? Header + "\r\n" : Check(path, stream);
        var line = Encoding.ASCII.GetBytes($"{separator}{Spell(sum, files, time)}\r\n");
        stream.Seek(0, SeekOrigin.End);
        stream.Write(line, 0, line.Length);
        stream.Flush(flushToDisk: true);
        return true;
    });

    private static string Spell(StatusSummary sum, int files, DateTime time)
    {
        var known = sum.Parts - sum.Unknown;
        string?[] values =
        [
            time.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture), Number(files), Number(sum.Parts), Number(sum.Done), Number(sum.Recheck), Number(sum.Open), Number(sum.Unknown), Number(sum.Missing),
            known > 0 && sum.Done is { } done ? (100.0 * done / known).ToString("0.##", CultureInfo.InvariantCulture) : string.Empty,
        ];
        return string.Join(",", values);
    }

    private static string? Number(int? number) => number?.ToString(CultureInfo.InvariantCulture);

    /// <summary>The file for nobody else, after whoever has it.</summary>
    private static FileStream Open(string path, CancellationToken cancellation)
    {
        var start = DateTime.UtcNow;
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException error) when (error.GetType() == typeof(IOException) && DateTime.UtcNow - start < Patience && File.Exists(path))
            {
                Thread.Sleep(WaitMilliseconds);
            }
        }
    }

    /// <summary>Compares the columns.</summary>
    /// <returns>What has to stand before a new line: an end of line where the file lacks one.</returns>
    private static string Check(string path, FileStream stream)
    {
        const int LongestHeader = 1000;
        var start = new byte[(int)Math.Min(LongestHeader, stream.Length)];
        for (var count = 0; count < start.Length && stream.Read(start, count, start.Length - count) is > 0 and var read;) count += read;
        var header = Encoding.UTF8.GetString(start).TrimStart('\uFEFF').Split('\n')[0].TrimEnd('\r');
        if (header.Replace("\"", string.Empty) != Header)
        {
            throw new LayeredFileException(LayeredFileErrorKind.BadLedger, path, "line 1", -1, "The file has other columns than a history of sums, so nothing was appended.",
                $"Name another file; the columns of a history are {Header}.");
        }

        stream.Seek(-1, SeekOrigin.End);
        return stream.ReadByte() == '\n' ? string.Empty : "\r\n";
    }
}
