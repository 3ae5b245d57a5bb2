using LayerTools.Checks;
using LayerTools.Json;
using LayerTools.Names;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Finds words that stand for nothing, for two things or for a side, and zones that the stack and the words do not share.</summary>
internal static class VocabularyChecks
{
    /// <summary>The zone of parts that lie wherever they are needed; a stack need not list it.</summary>
    private const string Anywhere = "anywhere";

    public static IEnumerable<ProfileFinding> Run(ProfileDocument document, LayerProfile profile)
    {
        var vocabulary = document.Root["naming"]?["vocabulary"];
        var parts = vocabulary?["parts"] as JArray ?? [];
        if (profile.Naming.Vocabulary.Parts.Count == 0)
        {
            yield return document.Find(vocabulary!, Severity.Error, "The vocabulary has no words, so that no part would be known.", "Let it extend the built-in one, or add parts.");
        }

        foreach (var key in ProfileChecks.Repeated(parts.Select(part => part["key"]!), key => key.Value<string>()!))
        {
            yield return document.Find(key, Severity.Error, $"Two parts have the key '{key.Value<string>()}'.", "Give each a key of its own, or make one part of them.");
        }

        foreach (var finding in CheckWords(document, parts).Concat(CheckZones(document, profile, parts))) yield return finding;
    }

    private static IEnumerable<ProfileFinding> CheckWords(ProfileDocument document, JArray parts)
    {
        var owners = new Dictionary<string, JToken>(StringComparer.Ordinal);
        foreach (var part in parts)
        {
            foreach (var json in new[] { part["english"]!, part["japanese"]! }.Concat(part["synonyms"] ?? new JArray()))
            {
                var word = json.Value<string>()!;
                var folded = Folding.Fold(word);
                if (folded.Length == 0)
                {
                    yield return document.Find(json, Severity.Error, $"'{word}' has nothing in it but what parts words, so it cannot be found in a name.", "Write a word.");
                }
                else if (SideToken.FindAll(word) is [var side] && side.Text.Length == word.Length)
                {
                    yield return document.Find(json, Severity.Error, $"'{word}' is read as {JsonWords.Of(side.Side)} in every file, so it cannot be a part.", "Write another word.");
                }
                else if (owners.TryGetValue(folded, out var owner) && owner != part)
                {
                    yield return document.Find(json, Severity.Warning, $"'{word}' is a word for '{owner["key"]}' too; the later part, '{part["key"]}', has it.", "Leave it to one of them.");
                }

                owners[folded] = part;
            }
        }
    }

    private static IEnumerable<ProfileFinding> CheckZones(ProfileDocument document, LayerProfile profile, JArray parts)
    {
        if (profile.Stack.Count == 0) yield break;
        var known = profile.Naming.Vocabulary.Parts.Select(part => part.Zone).Distinct().ToList();
        foreach (var json in document.Root["stack"]!.Where(json => !known.Contains(json.Value<string>()!)))
        {
            var zone = json.Value<string>()!;
            yield return document.Find(json, Severity.Warning, $"No part of the vocabulary is in the zone '{zone}'.", Suggest(zone, known.Except(profile.Stack)) ?? "Leave it out, or add a part of this zone.");
        }

        foreach (var json in parts.Select(part => part["zone"]!).Where(json => json.Value<string>() is not Anywhere and var zone && !profile.Stack.Contains(zone)))
        {
            var zone = json.Value<string>()!;
            yield return document.Find(json, Severity.Warning, $"The zone '{zone}' is not in the stack, so that the part has no place of its own.", Suggest(zone, profile.Stack) ?? $"Add it to the stack, or write '{Anywhere}' if that is meant.");
        }
    }

    private static string? Suggest(string zone, IEnumerable<string> zones) => NearestWord.Find(zone, zones) is { } near ? $"Write '{near}', if that is meant." : null;
}
