using System.Text.Json;

namespace LayerTools.Names;

/// <summary>The words that ship with the library, <c>vocabulary.json</c>.</summary>
internal static class VocabularyFile
{
    /// <summary>Reads the parts, in the order of the file.</summary>
    public static IReadOnlyList<VocabularyPart> Read()
    {
        using var stream = typeof(VocabularyFile).Assembly.GetManifestResourceStream("vocabulary.json")!;
        using var json = JsonDocument.Parse(stream);
        return [.. json.RootElement.GetProperty("parts").EnumerateArray().Select(ReadPart)];
    }

    private static VocabularyPart ReadPart(JsonElement part) => new()
    {
        Key = ReadText(part, "key"),
        Zone = ReadText(part, "zone"),
        English = ReadText(part, "english"),
        Japanese = ReadText(part, "japanese"),
        IsPaired = part.TryGetProperty("paired", out var paired) && paired.GetBoolean(),
        IsDetail = part.TryGetProperty("detail", out var detail) && detail.GetBoolean(),
        Synonyms = [.. part.GetProperty("synonyms").EnumerateArray().Select(synonym => synonym.GetString()!)],
    };

    private static string ReadText(JsonElement part, string property) => part.GetProperty(property).GetString()!;
}
