using LayerTools.Checks;
using LayerTools.Names;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Finds what a profile says against itself, or against what is known here, although its form is right.</summary>
internal static class ProfileChecks
{
    public static IReadOnlyList<ProfileFinding> Run(ProfileDocument document, LayerProfile profile)
    {
        List<ProfileFinding> findings =
        [
            .. ProfileSchema.CheckReference(document),
            .. CheckName(document),
            .. CheckCanvas(document, profile.Canvas),
            .. SideChecks.Run(document, profile.Naming.Sides),
            .. NamingChecks.Run(document, profile.Naming),
            .. VocabularyChecks.Run(document, profile),
            .. CheckScreens(document),
            .. RuleChecks.Run(document, profile.Rules),
        ];
        // A profile that is wrong already need not be tried.
        return findings.Any(finding => finding.Severity == Severity.Error) ? findings : [.. findings, .. StyleTrial.Run(document, profile.Naming)];
    }

    private static IEnumerable<ProfileFinding> CheckName(ProfileDocument document)
    {
        var json = document.Root["name"]!;
        var name = json.Value<string>()!;
        if (string.IsNullOrWhiteSpace(name) || !name.All(PrintableText.IsPrintable)) yield return document.Find(json, Severity.Error, "The name is blank, or holds characters that are not shown.", "Write a name in letters.");
    }

    private static IEnumerable<ProfileFinding> CheckCanvas(ProfileDocument document, CanvasProfile canvas)
    {
        if (canvas is { EvenWidth: true, Width: { } width } && width % 2 != 0)
        {
            yield return document.Find(document.Root["canvas"]!["width"]!, Severity.Error, FormattableString.Invariant($"The width of {width} px is odd, and the profile wants an even one."),
                FormattableString.Invariant($"Write {width + 1}, or set evenWidth to false."));
        }
    }

    private static IEnumerable<ProfileFinding> CheckScreens(ProfileDocument document)
    {
        var names = (document.Root["screens"] as JArray ?? []).Select(screen => screen["name"]!);
        return Repeated(names, name => name.Value<string>()!.ToUpperInvariant())
            .Select(name => document.Find(name, Severity.Error, $"Two screens are called '{name.Value<string>()}'.", "Give each a name of its own."));
    }

    /// <summary>Those items whose key an earlier one has.</summary>
    internal static IEnumerable<T> Repeated<T>(IEnumerable<T> items, Func<T, string> key)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return items.Where(item => !seen.Add(key(item)));
    }
}
