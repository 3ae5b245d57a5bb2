using LayerTools.Checks;
using LayerTools.Errors;
using LayerTools.Json;
using LayerTools.Names;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>The text of a profile as JSON whose values know their places.</summary>
internal sealed class ProfileDocument
{
    private ProfileDocument(string path, PlacedJson json) => (Path, Json) = (path, json);

    /// <summary>The file, or the name of a profile that ships with the module.</summary>
    public string Path { get; }

    public PlacedJson Json { get; }

    public JToken Root => Json.Root;

    /// <exception cref="ProfileException">The text is no JSON.</exception>
    /// <exception cref="LayeredFileException">The file cannot be opened, or is too large for a profile.</exception>
    public static ProfileDocument Read(string path) => Read(path, () => PlacedJson.Read(ProfileSchema.Format, path));

    /// <inheritdoc cref="Read(string)"/>
    public static ProfileDocument Read(string path, Stream stream) => Read(path, () => PlacedJson.Read(ProfileSchema.Format, path, stream));

    /// <summary>Something that is wrong with a value.</summary>
    public ProfileFinding Find(JToken token, Severity severity, string message, string remedy) => Find(PlacedJson.Find(token, message, remedy), severity);

    /// <summary>Something that is wrong, as a finding.</summary>
    public ProfileFinding Find(JsonFault fault, Severity severity) => CreateFinding(Path, fault, severity);

    private static ProfileDocument Read(string path, Func<PlacedJson> read)
    {
        try
        {
            return new ProfileDocument(path, read());
        }
        catch (JsonFaultException error)
        {
            throw new ProfileException([CreateFinding(path, error.Fault, Severity.Error)]);
        }
    }

    private static ProfileFinding CreateFinding(string path, JsonFault fault, Severity severity) => new()
    {
        Severity = severity,
        JsonPath = PrintableText.Of(fault.JsonPath),
        Line = fault.Place.Line,
        Column = fault.Place.Column,
        Message = PrintableText.Of(fault.Problem),
        Remedy = PrintableText.Of(fault.Remedy),
        FilePath = path,
    };
}
