using LayerTools.Checks;
using LayerTools.Json;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Finds settings of rules that there are not, and limits of rules that have none.</summary>
internal static class RuleChecks
{
    public static IEnumerable<ProfileFinding> Run(ProfileDocument document, IReadOnlyDictionary<string, RuleSetting> settings)
    {
        foreach (var json in (document.Root["rules"] as JObject)?.Properties() ?? [])
        {
            var rule = CheckRules.All.FirstOrDefault(rule => rule.Id == json.Name);
            if (rule is null)
            {
                var remedy = NearestWord.Find(json.Name, CheckRules.All.Select(known => known.Id)) is { } near ? $"Write '{near}', if that is meant." : "Leave it out; the help of Test-LayerFile lists the rules.";
                yield return document.Find(json, Severity.Error, $"There is no rule '{json.Name}'.", remedy);
            }
            else if (rule.DefaultLimit is null && settings[json.Name].Limit is not null)
            {
                yield return document.Find(json.Value["limit"]!, Severity.Error, $"The rule '{json.Name}' has no limit.", "Leave the limit out.");
            }
        }
    }
}
