using LayerTools.Checks;
using LayerTools.Names;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Finds words for sides that cannot be told apart.</summary>
internal static class SideChecks
{
    private const string Remedy = "Give each side words of its own.";

    public static IEnumerable<ProfileFinding> Run(ProfileDocument document, SideStyle style)
    {
        if (document.Root["sides"] is not JObject sides) yield break;
        var (left, right) = (Words(sides, "left", "leftTokens"), Words(sides, "right", "rightTokens"));
        foreach (var (json, word) in left.Concat(right).Where(item => Folding.Fold(item.Word).Length == 0))
        {
            yield return document.Find(json, Severity.Error, $"'{word}' has nothing in it but what parts words, so it cannot be found in a name.", "Write a letter or a word.");
        }

        foreach (var (json, word) in left.Where(item => IsBuiltIn(item.Word, Side.Right)))
        {
            yield return document.Find(json, Severity.Error, $"'{word}' stands for left here, and is read as right in every file.", Remedy);
        }

        foreach (var (json, word) in right.Where(item => IsBuiltIn(item.Word, Side.Left)))
        {
            yield return document.Find(json, Severity.Error, $"'{word}' stands for right here, and is read as left in every file.", Remedy);
        }

        var leftWords = new HashSet<string>([.. style.LeftTokens.Append(style.Left).Select(Folding.Fold)], StringComparer.Ordinal);
        foreach (var (json, word) in right.Where(item => leftWords.Contains(Folding.Fold(item.Word)) && !IsBuiltIn(item.Word, Side.Left)))
        {
            yield return document.Find(json, Severity.Error, $"'{word}' stands for left and for right.", Remedy);
        }

        foreach (var (name, usual) in new[] { ("left", "L"), ("right", "R") })
        {
            if (sides[name] is not { } json || json.Value<string>() is not { } written || Folding.Fold(written).Length == 0 || SideToken.FindAll(written).Count > 0) continue;
            yield return document.Find(json, Severity.Warning, $"'{written}' is written for {name}, but pairs and mirroring do not know it.", $"Write a token that every file may use, such as '{usual}', and read '{written}' by {name}Tokens.");
        }
    }

    private static List<(JToken Json, string Word)> Words(JObject sides, string written, string read) =>
        new[] { sides[written] }.Concat(sides[read] ?? new JArray()).OfType<JToken>().Select(json => (json, json.Value<string>()!)).ToList();

    private static bool IsBuiltIn(string word, Side side) => SideToken.FindAll(word) is [var token] && token.Side == side && token.Text.Length == word.Length;
}
