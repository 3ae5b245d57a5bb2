extern alias SchemaLibrary;

using Newtonsoft.Json.Linq;
using NJsonSchema;
using SchemaLibrary::NJsonSchema;
using SchemaLibrary::NJsonSchema.Validation;

namespace LayerTools.Json;

/// <summary>Compares files of one kind with their schema (JSON Schema draft-07).</summary>
/// <param name="format">The kind of file.</param>
internal sealed class FormatSchema(JsonFormat format)
{
    private readonly Lazy<JsonSchema> schema = new(() => JsonSchema.FromJsonAsync(ReadText(format)).GetAwaiter().GetResult());

    /// <summary>The schema as it is shipped.</summary>
    public static string ReadText(JsonFormat format)
    {
        using var reader = new StreamReader(typeof(FormatSchema).Assembly.GetManifestResourceStream(format.SchemaFile)!);
        return reader.ReadToEnd();
    }

    /// <summary>What does not follow the schema.</summary>
    public IEnumerable<JsonFault> Check(PlacedJson json) =>
        schema.Value.Validate(json.Root).SelectMany(Flatten)
            .Where(error => error.Kind != ValidationErrorKind.PropertyRequired || error.Token is JObject)
            // A value that is neither the right kind nor one of the words is one mistake. Values at different places may be equal.
            .GroupBy(error => (error.Token!.Annotation<TextPlace>(), error.Kind == ValidationErrorKind.PropertyRequired ? error.Property : null)).Select(group => group.First())
            .SelectMany(Describe);

    /// <summary>What is wrong with the schema that a file says it follows; null if nothing is. Nothing is ever fetched.</summary>
    public JsonFault? CheckReference(PlacedJson json)
    {
        if (json.Root["$schema"] is not { } token) return null;
        var reference = token.Value<string>()!;
        var isCopy = reference.Split('/', '\\').Last() == format.SchemaFile && !reference.Contains("://");
        return reference == format.SchemaId || isCopy ? null : PlacedJson.Find(token, $"The {format.Noun} follows '{reference}', which is not known here; schemas are never fetched.",
            $"Write '{format.SchemaId}', or the relative path of a copy of {format.SchemaFile}.");
    }

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

    private IEnumerable<JsonFault> Describe(ValidationError error)
    {
        var token = error.Token!;
        var meant = error.Schema.ActualSchema;
        return error.Kind switch
        {
            ValidationErrorKind.NoAdditionalPropertiesAllowed => [DescribeUnknown((JProperty)token, meant)],
            ValidationErrorKind.PropertyRequired => [PlacedJson.Find(token, $"{SchemaWords.Label(token, format.Noun)} has no '{error.Property}'.",
                $"Add it: {SchemaWords.Meaning(meant.ActualProperties[error.Property!])}")],
            ValidationErrorKind.ItemsNotUnique => FindRepeated((JArray)token).Select(item => PlacedJson.Find(item, $"{SchemaWords.Value(item)} is there twice.", "Leave one of them out.")),
            _ => [PlacedJson.Find(token, $"{SchemaWords.Label(token, format.Noun)} is {SchemaWords.Value(token)}, and has to be {SchemaWords.Describe(meant)}.",
                $"Correct it: {SchemaWords.Meaning(meant)}")],
        };
    }

    private static JsonFault DescribeUnknown(JProperty property, JsonSchema schema)
    {
        var known = schema.ActualProperties.Keys.ToList();
        var remedy = NearestWord.Find(property.Name, known) is { } near ? $"Write '{near}', if that is meant." : $"Known are {SchemaWords.List(known, "and")}.";
        return PlacedJson.Find(property, $"There is no property '{property.Name}' here.", remedy);
    }

    private static IEnumerable<JToken> FindRepeated(JArray list)
    {
        var seen = new HashSet<JToken>(new JTokenEqualityComparer());
        return list.Where(item => !seen.Add(item));
    }
}
