using LayerTools.Json;
using LayerTools.Names;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Writes profiles as JSON that follows the schema; <see cref="ProfileBinder"/> reads it.</summary>
internal static class ProfileWriter
{
    /// <param name="profile">The profile.</param>
    /// <param name="schema">What it says of its schema.</param>
    /// <returns>UTF-8 without a byte order mark.</returns>
    public static byte[] ToJson(LayerProfile profile, string schema) => JsonText.Write(ToObject(profile, schema));

    private static JObject ToObject(LayerProfile profile, string schema) => new()
    {
        ["$schema"] = schema,
        ["name"] = profile.Name,
        ["description"] = profile.Description,
        ["canvas"] = new JObject
        {
            ["width"] = profile.Canvas.Width,
            ["height"] = profile.Canvas.Height,
            ["ppi"] = Number(profile.Canvas.Ppi),
            ["evenWidth"] = profile.Canvas.EvenWidth,
        },
        ["sides"] = ToObject(profile.Naming.Sides),
        ["naming"] = ToObject(profile.Naming),
        ["stack"] = new JArray(profile.Stack),
        ["marks"] = new JObject(profile.Marks.OrderBy(mark => mark.Key).Select(mark => new JProperty(JsonWords.Of(mark.Key), JsonWords.Of(mark.Value)))),
        ["screens"] = new JArray(profile.Screens.Select(screen => new JObject { ["name"] = screen.Name, ["width"] = screen.Width, ["height"] = screen.Height })),
        ["textures"] = new JObject
        {
            ["pageSize"] = profile.Textures.PageSize,
            ["padding"] = profile.Textures.Padding,
            ["turn"] = profile.Textures.Turn,
            ["pages"] = profile.Textures.Pages,
        },
        ["rules"] = new JObject(profile.Rules.OrderBy(rule => rule.Key, StringComparer.Ordinal).Select(rule => new JProperty(rule.Key, ToValue(rule.Value)))),
    };

    private static JObject ToObject(SideStyle style) => new()
    {
        ["left"] = style.Left,
        ["right"] = style.Right,
        ["leftTokens"] = new JArray(style.LeftTokens),
        ["rightTokens"] = new JArray(style.RightTokens),
        ["place"] = JsonWords.Of(style.Place),
        ["whoseLeft"] = JsonWords.Of(style.Owner),
    };

    private static JObject ToObject(NamingStyle style) => new()
    {
        ["language"] = JsonWords.Of(style.Language),
        ["separator"] = style.Separator,
        ["case"] = JsonWords.Of(style.Case),
        ["numberDigits"] = style.NumberDigits,
        ["firstNumber"] = style.FirstNumber,
        ["longestName"] = style.LongestName,
        ["vocabulary"] = ToObject(style.Vocabulary),
    };

    private static JObject ToObject(Vocabulary vocabulary)
    {
        var builtIn = Vocabulary.BuiltIn.Parts;
        var extends = vocabulary.Parts.Take(builtIn.Count).SequenceEqual(builtIn);
        return new JObject
        {
            ["extends"] = extends,
            ["parts"] = new JArray(vocabulary.Parts.Skip(extends ? builtIn.Count : 0).Select(part => new JObject
            {
                ["key"] = part.Key,
                ["english"] = part.English,
                ["japanese"] = part.Japanese,
                ["zone"] = part.Zone,
                ["detail"] = part.IsDetail,
                ["paired"] = part.IsPaired,
                ["synonyms"] = new JArray(part.Synonyms),
            })),
        };
    }

    private static JToken ToValue(RuleSetting rule)
    {
        if (rule is { Limit: null, Severity: { } only }) return JsonWords.Of(only);
        var setting = new JObject();
        if (rule.Severity is { } severity) setting["severity"] = JsonWords.Of(severity);
        setting["limit"] = Number(rule.Limit);
        return setting;
    }

    /// <summary>Whole numbers without the ".0" that the library gives them.</summary>
    private static JValue Number(double? number) => number is { } value && Math.Floor(value) == value ? new JValue((long)value) : new JValue(number);
}
