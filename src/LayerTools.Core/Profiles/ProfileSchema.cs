extern alias SchemaLibrary;

using LayerTools.Checks;
using Newtonsoft.Json.Linq;
using NJsonSchema;
using SchemaLibrary::NJsonSchema;
using SchemaLibrary::NJsonSchema.Validation;

namespace LayerTools.Profiles;

/// <summary>Compares profiles with their schema.</summary>
internal static class ProfileSchema
{
    /// <summary>The id that profiles refer to.</summary>
    public const string Id = "urn:layertools:layerprofile:1";

    /// <summary>What the schema's file is called.</summary>
    public const string FileName = "layerprofile.schema.json";

    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromJsonAsync(ReadText()).GetAwaiter().GetResult());

    /// <summary>The schema as it is shipped.</summary>
    public static string ReadText()
    {
        using var reader = new StreamReader(typeof(ProfileSchema).Assembly.GetManifestResourceStream(FileName)!);
        return reader.ReadToEnd();
    }

    /// <summary>What does not follow the schema.</summary>
    public static IEnumerable<ProfileFinding> Check(ProfileDocument document) =>
        Schema.Value.Validate(document.Root).SelectMany(Flatten)
            .Where(error => error.Kind != ValidationErrorKind.PropertyRequired || error.Token is JObject)
            // A value that is neither the right kind nor one of the words is one mistake. Values at different places may be equal.
            .GroupBy(error => (error.Token!.Annotation<TextPlace>(), error.Kind == ValidationErrorKind.PropertyRequired ? error.Property : null)).Select(group => group.First())
            .SelectMany(error => Describe(document, error));

    /// <summary>The errors that say what is wrong, without those that only say that one of them is there.</summary>
    private static IEnumerable<ValidationError> Flatten(ValidationError error) => error switch
    {
        ChildSchemaValidationError { Kind: ValidationErrorKind.NotAnyOf } choice => FindMeant(choice),
        ChildSchemaValidationError parent => parent.Errors.SelectMany(child => child.Value).SelectMany(Flatten),
        _ => [error],
    };

    /// <summary>Where one of several forms is allowed, the errors against the one that was meant; else that it is none of them.</summary>
    private static IEnumerable<ValidationError> FindMeant(ChildSchemaValidationError choice)
    {
        var type = choice.Token!.Type switch
        {
            JTokenType.Object => JsonObjectType.Object,
            JTokenType.String => JsonObjectType.String,
            _ => JsonObjectType.None,
        };
        var meant = choice.Errors.Where(child => child.Key.ActualSchema.Type == type).SelectMany(child => child.Value).ToList();
        return meant.Count > 0 ? meant.SelectMany(Flatten) : [choice];
    }

    private static IEnumerable<ProfileFinding> Describe(ProfileDocument document, ValidationError error)
    {
        var token = error.Token!;
        var schema = error.Schema.ActualSchema;
        return error.Kind switch
        {
            ValidationErrorKind.NoAdditionalPropertiesAllowed => [DescribeUnknown(document, (JProperty)token, schema)],
            ValidationErrorKind.PropertyRequired => [document.Find(token, Severity.Error, $"{SchemaWords.Label(token)} has no '{error.Property}'.",
                $"Add it: {SchemaWords.Meaning(schema.ActualProperties[error.Property!])}")],
            ValidationErrorKind.ItemsNotUnique => FindRepeated((JArray)token).Select(item => document.Find(item, Severity.Error, $"{SchemaWords.Value(item)} is there twice.", "Leave one of them out.")),
            _ => [document.Find(token, Severity.Error, $"{SchemaWords.Label(token)} is {SchemaWords.Value(token)}, and has to be {SchemaWords.Describe(schema)}.",
                $"Correct it: {SchemaWords.Meaning(schema)}")],
        };
    }

    private static ProfileFinding DescribeUnknown(ProfileDocument document, JProperty property, JsonSchema schema)
    {
        var known = schema.ActualProperties.Keys.ToList();
        var remedy = NearestWord.Find(property.Name, known) is { } near ? $"Write '{near}', if that is meant." : $"Known are {SchemaWords.List(known, "and")}.";
        return document.Find(property, Severity.Error, $"There is no property '{property.Name}' here.", remedy);
    }

    private static IEnumerable<JToken> FindRepeated(JArray list)
    {
        var seen = new HashSet<JToken>(new JTokenEqualityComparer());
        return list.Where(item => !seen.Add(item));
    }
}
