using LayerTools.Json;
using LayerTools.Model;
using LayerTools.Names;
using System.Text.RegularExpressions;

namespace LayerTools.Profiles.Learning;

/// <summary>Language, separator and case of names.</summary>
internal sealed class FormLesson : Lesson
{
    /// <summary>What stands between two letters or digits, at most four characters; brackets hold notes and part nothing.</summary>
    private static readonly Regex Gap = new(@"(?<=[\p{L}\p{N}])[\s_\-.:,;~+|/\\　＿－．・：、〜]{1,4}(?=[\p{L}\p{N}])", RegexOptions.CultureInvariant);

    private readonly Tally<NameLanguage> languages = new();
    private readonly Tally<string> separators = new();
    private readonly List<NameForm> forms = [];
    private int longest;

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        foreach (var part in parts)
        {
            longest = Math.Max(longest, part.Name.Length);
            foreach (Match gap in Gap.Matches(part.Name)) separators.Add(gap.Value);
            var form = NameForm.Of(part.Name);
            if (form.Words.Count == 0) continue;
            languages.Add(form.IsJapanese ? NameLanguage.Japanese : NameLanguage.English);
            forms.Add(form);
        }
    }

    public override LayerProfile Teach(LayerProfile profile, LessonNotes notes)
    {
        var style = profile.Naming;
        if (!languages.TryFindMost(out var language, out var isLanguageClear))
        {
            notes.NotLearned.Add($"Names: there are none with words, so that language, separator and case are as in '{profile.Name}'.");
            return profile;
        }

        notes.Learned.Add($"Names: in {language}.");
        if (!isLanguageClear) notes.NotLearned.Add("Names: they are in two languages, of which the more frequent is taken.");
        style = style with { Language = language };
        style = LearnCase(style with { Separator = LearnSeparator(style, notes) }, profile, notes);
        if (longest > style.LongestName)
        {
            const int Longest = 255;
            style = style with { LongestName = Math.Min(longest, Longest) };
            notes.Learned.Add(FormattableString.Invariant($"Names: up to {style.LongestName} characters."));
        }

        return profile with { Naming = style };
    }

    private string LearnSeparator(NamingStyle style, LessonNotes notes)
    {
        if (separators.TryFindMost(out var separator, out var isClear))
        {
            notes.Learned.Add($"Names: '{separator}' between words, side and number.");
            if (!isClear) notes.NotLearned.Add($"Names: {string.Join(", ", separators.Counts.OrderByDescending(item => item.Value).Select(item => FormattableString.Invariant($"'{item.Key}' ({item.Value} times)")))} part words; the most frequent is taken.");
            return separator;
        }

        // Names of one word without a side show nothing; words that run together do, as does Japanese with sides.
        var isJoined = style.Language == NameLanguage.Japanese || forms.Any(form => form.Words.Count > 1);
        if (isJoined) notes.Learned.Add("Names: nothing between words, side and number.");
        else notes.NotLearned.Add($"Names: no name has two words, so that the separator is '{style.Separator}' as in the profile it began with.");
        return isJoined ? string.Empty : style.Separator;
    }

    private NamingStyle LearnCase(NamingStyle style, LayerProfile profile, LessonNotes notes)
    {
        var latin = forms.Where(form => !form.IsJapanese).ToList();
        // Several words tell more than one, which Upper arm, Upper Arm and UpperArm begin alike.
        var telling = latin.Where(form => form.Words.Count > 1).ToList();
        if (telling.Count == 0) telling = latin;
        if (telling.Count == 0) return style;
        var cases = new[] { profile.Naming.Case, NameCase.Sentence, NameCase.Title, NameCase.Lower, NameCase.Upper, NameCase.Pascal, NameCase.Camel };
        // Sorting keeps the order of equals, so what cannot be told apart stays as in the basis.
        var (best, count) = cases.Distinct().Select(nameCase => (nameCase, count: telling.Count(form => form.Follows(nameCase, style.Separator)))).OrderByDescending(item => item.count).First();
        if (count == 0 || (style.Separator.Length == 0 && best is not (NameCase.Pascal or NameCase.Camel)))
        {
            notes.NotLearned.Add($"Names: words are written in no case that is known, so that it is {JsonWords.Of(profile.Naming.Case)} as in '{profile.Name}'.");
            return style.Separator.Length == 0 && style.Language == NameLanguage.English ? style with { Case = NameCase.Pascal } : style;
        }

        notes.Learned.Add(FormattableString.Invariant($"Names: {JsonWords.Of(best)} case, as {count} of {telling.Count} are written."));
        if (5 * count < 4 * telling.Count) notes.NotLearned.Add("Names: the case is not clear, since many are written otherwise.");
        return style with { Case = best };
    }
}
