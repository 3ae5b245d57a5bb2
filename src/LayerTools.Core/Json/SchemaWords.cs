extern alias SchemaLibrary;

using System.Globalization;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;
using NJsonSchema;
using SchemaLibrary::NJsonSchema;

namespace LayerTools.Json;

/// <summary>Says in words what a schema asks for and what a text has in its place.</summary>
internal static class SchemaWords
{
    private const int LongestValue = 60;

    /// <summary>What a value is called: its property, or its place in a list.</summary>
    /// <param name="token">The value.</param>
    /// <param name="noun">What the whole file is called.</param>
    public static string Label(JToken token, string noun) => token switch
    {
        { Parent: JProperty property } => $"'{property.Name}'",
        { Parent: JArray list } => FormattableString.Invariant($"Item {list.IndexOf(token) + 1} of {Label(list, noun)}"),
        _ => $"The {noun}",
    };

    /// <summary>A value as it stands in the text, shortened.</summary>
    public static string Value(JToken token)
    {
        if (token is JContainer { Count: 0 }) return "empty";
        if (token is JObject) return "an object";
        if (token is JArray list) return FormattableString.Invariant($"a list of {list.Count}");
        var text = token.ToString(Formatting.None);
        return text.Length <= LongestValue ? text : text.Substring(0, LongestValue - 1).TrimEnd('\\') + "…\"";
    }

    /// <summary>What a schema asks for: "a whole number from 1 to 300000, or null".</summary>
    public static string Describe(JsonSchema schema)
    {
        if (schema.AnyOf.Count > 0) return List(schema.AnyOf.Select(one => Describe(one.ActualSchema)), "or");
        if (schema.Enumeration.Count > 0) return "one of " + List(schema.Enumeration.Select(value => JsonConvert.SerializeObject(value)), "and");
        var isNullable = schema.Type.HasFlag(JsonObjectType.Null);
        return DescribeType(schema) + (isNullable ? ", or null" : string.Empty);
    }

    /// <summary>What a value is for, to stand behind a colon.</summary>
    public static string Meaning(JsonSchema schema)
    {
        var description = schema.ActualSchema.Description;
        if (string.IsNullOrEmpty(description)) return Describe(schema.ActualSchema) + ".";
        return char.ToLowerInvariant(description![0]) + description.Substring(1);
    }

    /// <summary>A list in a sentence: "a, b or c".</summary>
    public static string List(IEnumerable<string> words, string joint)
    {
        var all = words.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.Take(all.Count - 1))} {joint} {all[all.Count - 1]}";
    }

    private static string DescribeType(JsonSchema schema) => (schema.Type & ~JsonObjectType.Null) switch
    {
        JsonObjectType.Integer => $"a whole number {Range(schema.Minimum, schema.Maximum)}",
        JsonObjectType.Number => $"a number {Range(schema.Minimum, schema.Maximum)}",
        JsonObjectType.Boolean => "true or false",
        JsonObjectType.Array => $"a list of {Range(schema.MinItems, schema.MaxItems)} items",
        JsonObjectType.Object => schema.MinProperties > 0 ? "an object that is not empty" : "an object",
        _ when schema.Pattern is not null => $"a text that matches {schema.Pattern}, at most {schema.MaxLength} characters",
        _ => $"a text of {Range(schema.MinLength ?? 0, schema.MaxLength)} characters",
    };

    private static string Range(decimal? least, decimal? most) =>
        string.Join(" ", new[] { least is { } from ? $"from {Text(from)}" : null, most is { } to ? $"to {Text(to)}" : null }.Where(part => part is not null));

    private static string Range(int least, int most) => $"{Text(least)} to {Text(most)}";

    private static string Range(int least, int? most) => most is { } to ? Range(least, to) : $"at least {Text(least)}";

    private static string Text(decimal number) => number.ToString("0.############", CultureInfo.InvariantCulture);
}
