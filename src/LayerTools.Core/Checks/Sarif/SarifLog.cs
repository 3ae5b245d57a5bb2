using System.Text.Encodings.Web;
using System.Text.Json;
using LayerTools.Images;
using LayerTools.Profiles;

namespace LayerTools.Checks.Sarif;

/// <summary>The findings of one call as a log of the Static Analysis Results Interchange Format, SARIF 2.1.0 (an OASIS Standard), with one run.</summary>
/// <param name="rules">The rules that were asked.</param>
/// <param name="profile">The profile that says how bad their findings are.</param>
/// <param name="version">The version of this module.</param>
/// <param name="folder">Full path of a folder; files in it are told as seen from it, others by their full path.</param>
internal sealed class SarifLog(IReadOnlyList<CheckRule> rules, LayerProfile profile, string version, string folder)
{
    private const string Schema = "https://json.schemastore.org/sarif-2.1.0.json";
    private const string FolderId = "FOLDER";

    private readonly List<(string Path, IReadOnlyList<Finding> Findings)> files = [];
    private readonly List<(string? Path, string Message)> failures = [];

    /// <summary>Takes what was found in a file; an empty list for a file without findings.</summary>
    public void Add(string path, IReadOnlyList<Finding> findings) => files.Add((path, findings));

    /// <summary>Takes note that a file could not be checked.</summary>
    public void AddFailure(string? path, string message) => failures.Add((path, message));

    /// <summary>Writes the log; the destination is whole at every moment.</summary>
    /// <exception cref="Errors.LayeredFileException">The destination exists and may not be overwritten, or cannot be written.</exception>
    public void Write(string destination, bool overwrite)
    {
        using var target = new ImageFolder([destination], overwrite);
        target.Write(0, ToJson());
        target.Commit();
    }

    /// <summary>The log as UTF-8.</summary>
    public byte[] ToJson()
    {
        using var bytes = new MemoryStream();
        // The text is read as a file, never as part of a web page, so names stay legible.
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", Schema);
            json.WriteString("version", "2.1.0");
            json.WriteStartArray("runs");
            WriteRun(json);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    private void WriteRun(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        WriteTool(json);
        WriteInvocation(json);
        json.WriteStartObject("originalUriBaseIds");
        json.WriteStartObject(FolderId);
        json.WriteString("uri", SarifUri.AbsoluteFolder(folder));
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartArray("artifacts");
        foreach (var (path, _) in files)
        {
            json.WriteStartObject();
            WriteLocation(json, "location", path, index: null);
            json.WriteStartArray("roles");
            json.WriteStringValue("analysisTarget");
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("columnKind", "utf16CodeUnits");
        json.WriteStartArray("results");
        for (var index = 0; index < files.Count; index++)
        {
            var fingerprints = new SarifFingerprints();
            foreach (var finding in files[index].Findings) WriteResult(json, finding, index, fingerprints.Next(finding));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WriteTool(Utf8JsonWriter json)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "LayerTools");
        json.WriteString("version", version);
        json.WriteStartArray("rules");
        foreach (var rule in rules)
        {
            var severity = rule.SeverityIn(profile);
            json.WriteStartObject();
            json.WriteString("id", rule.Id);
            json.WriteString("name", rule.Id);
            WriteText(json, "shortDescription", rule.Title + ".");
            WriteText(json, "fullDescription", rule.Reason);
            json.WriteStartObject("defaultConfiguration");
            json.WriteBoolean("enabled", severity != Severity.None);
            json.WriteString("level", Level(severity));
            json.WriteEndObject();
            if (rule.LimitUnit is { } unit)
            {
                json.WriteStartObject("properties");
                json.WriteNumber("limit", rule.LimitIn(profile));
                json.WriteString("limitUnit", unit);
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void WriteInvocation(Utf8JsonWriter json)
    {
        json.WriteStartArray("invocations");
        json.WriteStartObject();
        json.WriteBoolean("executionSuccessful", failures.Count == 0);
        json.WriteStartArray("toolExecutionNotifications");
        foreach (var (path, message) in failures)
        {
            json.WriteStartObject();
            json.WriteString("level", "error");
            WriteText(json, "message", message);
            if (path is not null)
            {
                json.WriteStartArray("locations");
                json.WriteStartObject();
                json.WriteStartObject("physicalLocation");
                WriteLocation(json, "artifactLocation", path, index: null);
                json.WriteEndObject();
                json.WriteEndObject();
                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private void WriteResult(Utf8JsonWriter json, Finding finding, int fileIndex, string fingerprint)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", finding.Rule);
        json.WriteNumber("ruleIndex", Enumerable.Range(0, rules.Count).First(index => rules[index].Id == finding.Rule));
        json.WriteString("level", Level(finding.Severity));
        WriteText(json, "message", finding.Message);
        json.WriteStartArray("locations");
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        WriteLocation(json, "artifactLocation", finding.FilePath, fileIndex);
        json.WriteEndObject();
        if (finding.LayerPath is { } path)
        {
            json.WriteStartArray("logicalLocations");
            json.WriteStartObject();
            json.WriteString("fullyQualifiedName", WellFormed.Of(path));
            json.WriteString("kind", "layer");
            json.WriteEndObject();
            json.WriteEndArray();
        }

        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteStartObject("partialFingerprints");
        json.WriteString(SarifFingerprints.Name, fingerprint);
        json.WriteEndObject();
        WriteProperties(json, finding);
        json.WriteEndObject();
    }

    private static void WriteProperties(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject("properties");
        if (finding.Measured is { } measured) json.WriteString("measured", WellFormed.Of(measured));
        if (finding.Limit is { } limit) json.WriteString("limit", WellFormed.Of(limit));
        json.WriteString("remedy", WellFormed.Of(finding.Remedy));
        if (finding.LayerNumber is { } number) json.WriteNumber("layerNumber", number);
        json.WriteEndObject();
    }

    private void WriteLocation(Utf8JsonWriter json, string name, string path, int? index)
    {
        json.WriteStartObject(name);
        if (SarifUri.RelativeTo(folder, path) is { } relative)
        {
            json.WriteString("uri", relative);
            json.WriteString("uriBaseId", FolderId);
        }
        else
        {
            json.WriteString("uri", SarifUri.Absolute(path));
        }

        if (index is { } place) json.WriteNumber("index", place);
        json.WriteEndObject();
    }

    private static void WriteText(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", SarifText.Of(text));
        json.WriteEndObject();
    }

    private static string Level(Severity severity) => severity.ToString().ToLowerInvariant();
}
