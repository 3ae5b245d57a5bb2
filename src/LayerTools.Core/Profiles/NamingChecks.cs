using LayerTools.Checks;
using LayerTools.Json;
using LayerTools.Names;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Finds separators that part nothing, and names that are too long for the limit.</summary>
internal static class NamingChecks
{
    public static IEnumerable<ProfileFinding> Run(ProfileDocument document, NamingStyle style) =>
        CheckSeparator(document, style, document.Root["naming"]).Concat(CheckLength(document, style, document.Root["naming"]));

    private static IEnumerable<ProfileFinding> CheckSeparator(ProfileDocument document, NamingStyle style, JToken? json)
    {
        if (json?["separator"] is { } separator)
        {
            if (style.Separator.Any(character => char.IsLetterOrDigit(character) || !PrintableText.IsPrintable(character)))
            {
                yield return document.Find(separator, Severity.Error, $"The separator '{style.Separator}' has a letter, a digit or a character that is not shown, so that words, sides and numbers cannot be told from it.",
                    "Write a blank, a hyphen, an underscore or the like.");
            }

            if (style is { Separator: "", Language: NameLanguage.English, Case: not (NameCase.Pascal or NameCase.Camel) })
            {
                yield return document.Find(separator, Severity.Error, $"Without a separator, English words in {JsonWords.Of(style.Case)} case run into each other.",
                    "Write a separator, or let case be \"pascal\" or \"camel\".");
            }
        }
    }

    private static IEnumerable<ProfileFinding> CheckLength(ProfileDocument document, NamingStyle style, JToken? json)
    {
        if (json?["longestName"] is not { } longest) yield break;
        var words = style.Vocabulary.Parts.Select(part => style.Language == NameLanguage.English ? part.English : part.Japanese).OrderByDescending(word => word.Length).FirstOrDefault() ?? string.Empty;
        var needed = words.Length + (2 * style.Separator.Length) + Math.Max(style.Sides.Left.Length, style.Sides.Right.Length) + style.NumberDigits;
        if (needed > style.LongestName)
        {
            yield return document.Find(longest, Severity.Warning, FormattableString.Invariant($"Names may have {style.LongestName} characters, and '{words}' with a side and a number takes {needed}."),
                FormattableString.Invariant($"Write {needed} or more, or shorter words."));
        }
    }
}
