using System.Globalization;
using System.Text.RegularExpressions;
using LayerTools.Model;

namespace LayerTools.Profiles.Learning;

/// <summary>How runs of equal names are numbered.</summary>
internal sealed class NumberLesson : Lesson
{
    private static readonly Regex Numbered = new(@"\A(.*?)([0-9]{1,6})\z", RegexOptions.CultureInvariant | RegexOptions.Singleline);

    private readonly Tally<int> firsts = new();
    private readonly Tally<int> digits = new();

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        var runs = parts.Select(part => Numbered.Match(part.Name)).Where(match => match.Success).GroupBy(match => match.Groups[1].Value, match => match.Groups[2].Value).Where(run => run.Count() > 1);
        foreach (var run in runs)
        {
            firsts.Add(run.Min(number => int.Parse(number, CultureInfo.InvariantCulture)));
            foreach (var number in run.Where(number => number[0] == '0' || number.Length == 1)) digits.Add(number.Length);
        }
    }

    public override LayerProfile Teach(LayerProfile profile, LessonNotes notes)
    {
        if (!firsts.TryFindMost(out var first, out _))
        {
            notes.NotLearned.Add($"Numbers: no name comes in a numbered run, so that they are as in '{profile.Name}'.");
            return profile;
        }

        var length = digits.TryFindMost(out var most, out _) ? most : profile.Naming.NumberDigits;
        notes.Learned.Add(FormattableString.Invariant($"Numbers: from {first}, with at least {length} digit{(length == 1 ? string.Empty : "s")}."));
        return profile with { Naming = profile.Naming with { FirstNumber = first, NumberDigits = length } };
    }
}
