using System.Globalization;
using LayerTools.Json;
using LayerTools.Measures;
using LayerTools.Model;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace LayerTools.Ledgers;

/// <summary>Ledgers as JSON that follows the schema, there and back.</summary>
internal static class LedgerText
{
    private const string TimeForm = "yyyy-MM-dd'T'HH:mm:ss'Z'";

    /// <summary>The text of a ledger: equal ledgers give equal bytes.</summary>
    public static byte[] Write(LayerLedger ledger) => JsonText.Write(new JObject
    {
        ["$schema"] = LedgerSchema.Format.SchemaId,
        ["file"] = ledger.File,
        ["fileVersion"] = ledger.FileVersion,
        ["parts"] = new JArray(ledger.Entries.Select(entry => (Entry: entry, Text: Spell(entry)))
            .OrderBy(item => item.Entry.LayerPath, StringComparer.Ordinal).ThenBy(item => item.Text, StringComparer.Ordinal).Select(item => ToObject(item.Entry))),
    });

    /// <summary>All that an entry says, the same under any culture.</summary>
    public static string Spell(LedgerEntry entry) => ToObject(entry).ToString(Formatting.None);

    /// <summary>The ledger in a text that follows the schema.</summary>
    public static LayerLedger Read(JObject json) => new(json.Value<string>("file")!, json.Value<string>("fileVersion")!, [.. json["parts"]!.Select(ReadEntry)]);

    /// <summary>A time as ledgers write it; null where there is no such day or hour.</summary>
    public static DateTime? TryReadTime(string text) =>
        DateTime.TryParseExact(text, TimeForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var time) ? time : null;

    private static JObject ToObject(LedgerEntry entry) => new()
    {
        ["path"] = entry.LayerPath,
        ["id"] = entry.Id,
        ["state"] = JsonWords.Of(entry.State),
        ["mark"] = entry.Mark is >= Mark.None and <= Mark.Gray ? JsonWords.Of(entry.Mark) : (int)entry.Mark,
        ["note"] = entry.Note,
        ["who"] = entry.Who,
        ["when"] = entry.When?.ToString(TimeForm, CultureInfo.InvariantCulture),
        ["pixels"] = entry.Pixels,
        ["mask"] = entry.Mask,
        ["look"] = entry.Look,
        ["left"] = entry.Painted.Left,
        ["top"] = entry.Painted.Top,
        ["width"] = entry.Painted.Width,
        ["height"] = entry.Painted.Height,
    };

    private static LedgerEntry ReadEntry(JToken json) => new()
    {
        LayerPath = json.Value<string>("path")!,
        Id = json.Value<int?>("id"),
        State = JsonWords.Parse<PartState>(json.Value<string>("state")!),
        Mark = json["mark"] is not { } mark ? Mark.None : mark.Type == JTokenType.String ? JsonWords.Parse<Mark>(mark.Value<string>()!) : (Mark)mark.Value<int>(),
        Note = json.Value<string>("note") ?? string.Empty,
        Who = json.Value<string>("who") ?? string.Empty,
        When = json.Value<string>("when") is { } when ? TryReadTime(when) : null,
        Pixels = json.Value<string>("pixels")!,
        Mask = json.Value<string>("mask") ?? string.Empty,
        Look = json.Value<string>("look") ?? string.Empty,
        Painted = Bounds.FromSize(json.Value<int?>("left") ?? 0, json.Value<int?>("top") ?? 0, json.Value<int?>("width") ?? 0, json.Value<int?>("height") ?? 0),
    };
}
