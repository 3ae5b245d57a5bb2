using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Json;
using Newtonsoft.Json.Linq;

namespace LayerTools.Ledgers;

/// <summary>Reads and writes ledgers. Nothing in a ledger runs, and nothing that it names is opened.</summary>
public static class LedgerFile
{
    /// <summary>Most parts that the schema allows.</summary>
    private const int MostParts = 10_000;

    private const string Remedy = "Correct it, or take the file as it was before from version control.";

    /// <summary>Reads a ledger.</summary>
    /// <param name="path">Full path of the file.</param>
    /// <exception cref="LayeredFileException">The file cannot be opened, is larger than 16 MB, or is no ledger; the section tells the value as a JSONPath (RFC 9535) with line and column.</exception>
    public static LayerLedger Read(string path)
    {
        try
        {
            var json = PlacedJson.Read(LedgerSchema.Format, path);
            if (FindFault(json) is { } fault) throw new JsonFaultException(fault);
            return LedgerText.Read((JObject)json.Root);
        }
        catch (JsonFaultException error)
        {
            var (jsonPath, place, problem, remedy) = error.Fault;
            throw new LayeredFileException(LayeredFileErrorKind.BadLedger, path, FormattableString.Invariant($"{jsonPath}, line {place.Line}, column {place.Column}"), -1, problem, remedy, error);
        }
    }

    /// <summary>Writes a ledger, whole or not at all. Equal ledgers give equal bytes: parts in ordinal order of their paths, LF, UTF-8 without a byte order mark.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="path">Full path of the file; one that is there is replaced.</param>
    /// <returns>Whether anything was written: a file that already says the same is left alone.</returns>
    /// <exception cref="LayeredFileException">There are more parts than a ledger holds, or the operating system refused; what was there is untouched.</exception>
    public static bool Write(LayerLedger ledger, string path)
    {
        var bytes = LedgerText.Write(ledger);
        if (ledger.Entries.Count > MostParts || bytes.Length > LedgerSchema.Format.LargestFile)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, path, "ledger", -1,
                FormattableString.Invariant($"A ledger holds at most {MostParts} parts and {LedgerSchema.Format.LargestFile} bytes, and this one would have {ledger.Entries.Count} and {bytes.Length}."),
                "Leave out the parts that vanished with -RemoveMissing, or shorten the notes.");
        }

        if (FileAccessErrors.Wrap(path, () => File.Exists(path) && new FileInfo(path).Length == bytes.Length && File.ReadAllBytes(path).AsSpan().SequenceEqual(bytes))) return false;
        using var file = new AtomicFile(path);
        file.Write(stream => stream.Write(bytes, 0, bytes.Length), bytes.Length);
        file.Commit(overwrite: true);
        return true;
    }

    /// <summary>What is wrong first, in the order of the text: with the form, then, if that is right, with what it says.</summary>
    private static JsonFault? FindFault(PlacedJson json) => First(LedgerSchema.Check(json)) ?? LedgerSchema.CheckReference(json) ?? First(CheckTimes(json)) ?? First(CheckTwins(json));

    private static JsonFault? First(IEnumerable<JsonFault> faults) => faults.OrderBy(fault => fault.Place.Line).ThenBy(fault => fault.Place.Column).FirstOrDefault();

    private static IEnumerable<JsonFault> CheckTimes(PlacedJson json) => json.Root["parts"]!.Select(part => part["when"])
        .Where(when => when?.Type == JTokenType.String && LedgerText.TryReadTime(when.Value<string>()!) is null)
        .Select(when => PlacedJson.Find(when!, $"There is no such time as '{when}'.", "Write a time that exists, UTC, as 2026-03-01T09:30:00Z."));

    private static IEnumerable<JsonFault> CheckTwins(PlacedJson json)
    {
        var seen = new HashSet<LedgerKey>();
        return json.Root["parts"]!.Zip(LedgerText.Read((JObject)json.Root).Entries, (part, entry) => (part, entry)).Where(item => !seen.Add(LedgerKey.Of(item.entry)))
            .Select(item => PlacedJson.Find(item.part, $"The part '{item.entry.LayerPath}' is there twice.", Remedy));
    }
}
