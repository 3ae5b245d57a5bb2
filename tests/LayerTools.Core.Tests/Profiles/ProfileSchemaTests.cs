using System.Text.Json.Nodes;
using Json.Schema;
using LayerTools.Checks;
using LayerTools.Profiles;
using Xunit;

namespace LayerTools.Tests.Profiles;

/// <summary>Outside source: JsonSchema.Net, which brings the metaschema of draft-07 (json-schema.org), reads the schema independently of the library the module validates with.</summary>
public class ProfileSchemaTests
{
    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(ProfileSchema.ReadText()));

    [Fact]
    public void The_schema_follows_draft_07() => Assert.True(MetaSchemas.Draft7.Evaluate(System.Text.Json.JsonDocument.Parse(ProfileSchema.ReadText()).RootElement).IsValid);

    [Fact]
    public void The_schema_is_called_what_profiles_refer_to() => Assert.Equal(ProfileSchema.Id, JsonNode.Parse(ProfileSchema.ReadText())!["$id"]!.GetValue<string>());

    [Fact]
    public void Every_property_is_described()
    {
        static IEnumerable<string> Undescribed(JsonNode? node, string path) => node switch
        {
            JsonObject json => json.SelectMany(child => Undescribed(child.Value, $"{path}/{child.Key}"))
                .Concat(json["properties"] is JsonObject properties ? properties.Where(property => property.Value!["description"] is null && property.Value["$ref"] is null).Select(property => $"{path}/{property.Key}") : []),
            JsonArray list => list.SelectMany((child, index) => Undescribed(child, $"{path}/{index}")),
            _ => [],
        };
        Assert.Empty(Undescribed(JsonNode.Parse(ProfileSchema.ReadText()), "#"));
    }

    [Fact]
    public void Editors_can_complete_every_rule()
    {
        var rules = (JsonObject)JsonNode.Parse(ProfileSchema.ReadText())!["properties"]!["rules"]!["properties"]!;
        Assert.Equal(CheckRules.All.Select(rule => (rule.Id, rule.Title + ".")), rules.Select(rule => (rule.Key, rule.Value!["description"]!.GetValue<string>())));
        Assert.All(rules, rule => Assert.Equal("#/definitions/rule", rule.Value!["$ref"]!.GetValue<string>()));
    }

    [Theory]
    [InlineData("figure")]
    [InlineData("figure-ja")]
    public void Shipped_profiles_follow_the_schema_and_themselves(string name)
    {
        using var stream = typeof(LayerProfiles).Assembly.GetManifestResourceStream(name + LayerProfiles.Extension)!;
        Assert.True(Evaluate(new StreamReader(stream).ReadToEnd()));
        Assert.Empty(LayerProfiles.CheckShipped(name));
    }

    /// <summary>Both libraries take and refuse the same profiles.</summary>
    [Theory]
    [MemberData(nameof(ProfileTexts.Good), MemberType = typeof(ProfileTexts))]
    public void Another_library_takes_what_is_taken(string text) => Assert.True(Evaluate(text));

    /// <inheritdoc cref="Another_library_takes_what_is_taken"/>
    [Theory]
    [MemberData(nameof(ProfileTexts.BadForm), MemberType = typeof(ProfileTexts))]
    public void Another_library_refuses_what_is_refused(string text, string jsonPath, int line, int column, string message, string remedy)
    {
        Assert.NotEmpty($"{jsonPath}{line}{column}{message}{remedy}");
        Assert.False(Evaluate(text));
    }

    private static bool Evaluate(string text) => Schema.Value.Evaluate(System.Text.Json.JsonDocument.Parse(text).RootElement).IsValid;
}
