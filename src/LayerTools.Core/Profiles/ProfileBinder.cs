using LayerTools.Checks;
using LayerTools.Json;
using LayerTools.Model;
using LayerTools.Names;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Makes a profile of JSON that follows the schema. What is left out is as in a new <see cref="LayerProfile"/>.</summary>
internal static class ProfileBinder
{
    private static readonly LayerProfile Plain = new() { Name = string.Empty };

    public static LayerProfile Bind(JObject json) => new()
    {
        Name = Text(json["name"], string.Empty),
        Description = Text(json["description"], string.Empty),
        Canvas = BindCanvas(json["canvas"]),
        Naming = BindNaming(json["naming"]) with { Sides = BindSides(json["sides"]) },
        Stack = Texts(json["stack"]),
        Marks = Properties(json["marks"]).ToDictionary(mark => JsonWords.Parse<Mark>(mark.Name), mark => JsonWords.Parse<MarkMeaning>(mark.Value.Value<string>()!)),
        Screens = json["screens"] is JArray screens ? screens.Select(BindScreen).ToList() : Plain.Screens,
        Textures = BindTextures(json["textures"]),
        Rules = Properties(json["rules"]).ToDictionary(rule => rule.Name, rule => BindRule(rule.Value), StringComparer.Ordinal),
    };

    private static CanvasProfile BindCanvas(JToken? json) => new()
    {
        Width = Whole(json?["width"]),
        Height = Whole(json?["height"]),
        Ppi = json?["ppi"]?.Value<double?>(),
        EvenWidth = Flag(json?["evenWidth"], Plain.Canvas.EvenWidth),
    };

    private static SideStyle BindSides(JToken? json) => new()
    {
        LeftTokens = Texts(json?["leftTokens"]),
        RightTokens = Texts(json?["rightTokens"]),
        Left = Text(json?["left"], Plain.Naming.Sides.Left),
        Right = Text(json?["right"], Plain.Naming.Sides.Right),
        Place = Word(json?["place"], Plain.Naming.Sides.Place),
        Owner = Word(json?["whoseLeft"], Plain.Naming.Sides.Owner),
    };

    private static NamingStyle BindNaming(JToken? json) => new()
    {
        Language = Word(json?["language"], Plain.Naming.Language),
        Separator = Text(json?["separator"], Plain.Naming.Separator),
        Case = Word(json?["case"], Plain.Naming.Case),
        NumberDigits = Whole(json?["numberDigits"]) ?? Plain.Naming.NumberDigits,
        FirstNumber = Whole(json?["firstNumber"]) ?? Plain.Naming.FirstNumber,
        LongestName = Whole(json?["longestName"]) ?? Plain.Naming.LongestName,
        Vocabulary = BindVocabulary(json?["vocabulary"]),
    };

    private static Vocabulary BindVocabulary(JToken? json)
    {
        var own = (json?["parts"] ?? new JArray()).Select(BindPart).ToList();
        return Flag(json?["extends"], true) ? new Vocabulary([.. Vocabulary.BuiltIn.Parts, .. own]) : new Vocabulary(own);
    }

    private static VocabularyPart BindPart(JToken json) => new()
    {
        Key = Text(json["key"], string.Empty),
        English = Text(json["english"], string.Empty),
        Japanese = Text(json["japanese"], string.Empty),
        Zone = Text(json["zone"], string.Empty),
        IsDetail = Flag(json["detail"], false),
        IsPaired = Flag(json["paired"], false),
        Synonyms = Texts(json["synonyms"]),
    };

    private static ScreenSize BindScreen(JToken json) => new(Text(json["name"], string.Empty), Whole(json["width"])!.Value, Whole(json["height"])!.Value);

    private static TextureProfile BindTextures(JToken? json) => new()
    {
        PageSize = Whole(json?["pageSize"]) ?? Plain.Textures.PageSize,
        Padding = Whole(json?["padding"]) ?? Plain.Textures.Padding,
        Turn = Flag(json?["turn"], Plain.Textures.Turn),
        Pages = Whole(json?["pages"]),
    };

    private static RuleSetting BindRule(JToken json) => json is JObject
        ? new RuleSetting(json["severity"] is { } severity ? JsonWords.Parse<Severity>(severity.Value<string>()!) : null, json["limit"]?.Value<double?>())
        : new RuleSetting(JsonWords.Parse<Severity>(json.Value<string>()!), null);

    private static IEnumerable<JProperty> Properties(JToken? json) => (json as JObject)?.Properties() ?? [];

    private static List<string> Texts(JToken? json) => (json ?? new JArray()).Select(item => item.Value<string>()!).ToList();

    private static string Text(JToken? json, string plain) => json?.Value<string>() ?? plain;

    private static int? Whole(JToken? json) => json?.Value<int?>();

    private static bool Flag(JToken? json, bool plain) => json?.Value<bool?>() ?? plain;

    private static T Word<T>(JToken? json, T plain)
        where T : struct, Enum => json?.Value<string>() is { } word ? JsonWords.Parse<T>(word) : plain;
}
