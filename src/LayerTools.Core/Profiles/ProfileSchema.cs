using LayerTools.Checks;
using LayerTools.Json;

namespace LayerTools.Profiles;

/// <summary>Compares profiles with their schema.</summary>
internal static class ProfileSchema
{
    /// <summary>The id that profiles refer to.</summary>
    public const string Id = "urn:layertools:layerprofile:1";

    /// <summary>What the schema's file is called.</summary>
    public const string FileName = "layerprofile.schema.json";

    /// <summary>Profiles as a kind of JSON file. One with a thousand words of its own has some 100,000 bytes and 15,000 values.</summary>
    public static readonly JsonFormat Format = new("profile", LayerProfiles.Extension, Id, FileName);

    private static readonly FormatSchema Schema = new(Format);

    /// <summary>The schema as it is shipped.</summary>
    public static string ReadText() => FormatSchema.ReadText(Format);

    /// <summary>What does not follow the schema.</summary>
    public static IEnumerable<ProfileFinding> Check(ProfileDocument document) => Schema.Check(document.Json).Select(fault => document.Find(fault, Severity.Error));

    /// <summary>Whether the profile says that it follows another schema.</summary>
    public static IEnumerable<ProfileFinding> CheckReference(ProfileDocument document)
    {
        if (Schema.CheckReference(document.Json) is { } fault) yield return document.Find(fault, Severity.Error);
    }
}
