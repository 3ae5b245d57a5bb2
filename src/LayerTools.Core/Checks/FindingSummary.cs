using LayerTools.Profiles;

namespace LayerTools.Checks;

/// <summary>What one rule found in one file. Plain values, so that tables, CSV and JSON stay readable.</summary>
public sealed record FindingSummary
{
    private const int MostNames = 3;

    /// <summary>How bad the worst of the findings is.</summary>
    public required Severity Severity { get; init; }

    /// <summary>The id of the rule.</summary>
    public required string Rule { get; init; }

    /// <summary>How often it found something, 1 or more.</summary>
    public required int Count { get; init; }

    /// <summary>What is wrong: the finding itself where there is one, else the rule's title.</summary>
    public required string Message { get; init; }

    /// <summary>The paths of the first layers, front to back, and how many more there are; null for what concerns the whole file.</summary>
    public string? Layers { get; init; }

    /// <summary>What to do: the remedy where it is the same for all, else a command that shows each.</summary>
    public required string Remedy { get; init; }

    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>Sums the findings of one file up: the worst first, then the most frequent.</summary>
    /// <param name="findings">What was found, front to back.</param>
    /// <param name="profile">The profile that was asked with, for commands that ask again.</param>
    public static IReadOnlyList<FindingSummary> Of(IReadOnlyCollection<Finding> findings, LayerProfile profile) =>
        [.. findings
            .GroupBy(finding => (finding.FilePath, finding.Rule))
            .Select(group => Of(group.ToList(), profile))
            .OrderByDescending(summary => summary.Severity)
            .ThenByDescending(summary => summary.Count)
            .ThenBy(summary => summary.Rule, StringComparer.Ordinal)];

    private static FindingSummary Of(List<Finding> findings, LayerProfile profile)
    {
        var first = findings[0];
        var isAlike = findings.TrueForAll(finding => finding.Remedy == first.Remedy);
        return new FindingSummary
        {
            Severity = findings.Max(finding => finding.Severity),
            Rule = first.Rule,
            Count = findings.Count,
            Message = findings.Count == 1 ? first.Message : CheckRules.Find(first.Rule) is { } rule ? rule.Title + "." : first.Message,
            Layers = NameLayers([.. findings.Select(finding => finding.LayerPath).OfType<string>()]),
            Remedy = isAlike ? first.Remedy : ShowEach(first, profile),
            FilePath = first.FilePath,
        };
    }

    private static string? NameLayers(string[] paths) => paths.Length switch
    {
        0 => null,
        <= MostNames => string.Join(", ", paths),
        _ => FormattableString.Invariant($"{string.Join(", ", paths.Take(MostNames))} and {paths.Length - MostNames} more"),
    };

    private static string ShowEach(Finding first, LayerProfile profile) =>
        $"Test-LayerFile -LiteralPath {Quoted.Of(first.FilePath)} -Rule {first.Rule}{Checks.Remedy.ProfileArgument(profile)} | Format-List LayerPath, Message, Remedy";
}
