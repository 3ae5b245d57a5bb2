using System.Management.Automation;
using LayerTools.Checks;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>The rules that a command line chooses with -Rule and -ExcludeRule.</summary>
internal sealed class RuleChoice
{
    private const int MostSuggestions = 3;

    private readonly HashSet<string> named;

    /// <param name="candidates">The rules to choose from.</param>
    /// <param name="rule">Names of the rules to keep, wildcards allowed; null for all.</param>
    /// <param name="excludeRule">Names of the rules to leave out, likewise; null for none.</param>
    /// <exception cref="RefusedException">A name fits no rule.</exception>
    public RuleChoice(IReadOnlyList<CheckRule> candidates, string[]? rule, string[]? excludeRule)
    {
        var wanted = ToPatterns(candidates, rule);
        var unwanted = ToPatterns(candidates, excludeRule);
        Rules = [.. candidates.Where(candidate => (wanted is null || wanted.Any(pattern => pattern.IsMatch(candidate.Id))) && unwanted?.Any(pattern => pattern.IsMatch(candidate.Id)) != true)];
        named = new HashSet<string>(rule ?? [], StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The chosen rules, by name.</summary>
    public IReadOnlyList<CheckRule> Rules { get; }

    /// <summary>The profile for these rules: one that is asked for by its whole name is asked although the profile switches it off.</summary>
    public LayerProfile Adjust(LayerProfile profile)
    {
        var settings = profile.Rules.ToDictionary(item => item.Key, item => item.Value);
        foreach (var rule in Rules.Where(rule => named.Contains(rule.Id) && rule.SeverityIn(profile) == Severity.None))
        {
            settings.TryGetValue(rule.Id, out var setting);
            settings[rule.Id] = new RuleSetting(rule.DefaultSeverity == Severity.None ? Severity.Note : rule.DefaultSeverity, setting?.Limit);
        }

        return profile with { Rules = settings };
    }

    private static List<WildcardPattern>? ToPatterns(IReadOnlyList<CheckRule> candidates, string[]? names) => names?.Select(name =>
    {
        var pattern = new WildcardPattern(name, WildcardOptions.IgnoreCase | WildcardOptions.CultureInvariant);
        return candidates.Any(rule => pattern.IsMatch(rule.Id)) ? pattern : throw new RefusedException(CheckRules.Find(name) is { } rule ? ErrorRecords.RuleNotRepairable(rule.Id, candidates.Select(candidate => candidate.Id)) : ErrorRecords.RuleNotFound(name, FindNear(candidates, name)));
    }).ToList();

    /// <summary>The rules whose names are most like a name: those that share the largest part of their pairs of letters with it (Dice's coefficient).</summary>
    private static List<string> FindNear(IReadOnlyList<CheckRule> candidates, string name)
    {
        const double LeastAlike = 0.35;
        return [.. candidates.Select(rule => (rule.Id, Alike: Compare(rule.Id, name))).Where(item => item.Alike >= LeastAlike)
            .OrderByDescending(item => item.Alike).ThenBy(item => item.Id, StringComparer.Ordinal).Take(MostSuggestions).Select(item => item.Id)];
    }

    private static double Compare(string one, string other)
    {
        var (pairs, others) = (Pairs(one), Pairs(other));
        return pairs.Count + others.Count == 0 ? 0 : 2.0 * pairs.Intersect(others).Count() / (pairs.Count + others.Count);
    }

    private static HashSet<string> Pairs(string text)
    {
        var upper = text.ToUpperInvariant();
        return [.. Enumerable.Range(0, Math.Max(0, upper.Length - 1)).Select(index => upper.Substring(index, 2))];
    }
}
