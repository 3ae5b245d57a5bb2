using System.Globalization;
using System.Text;

namespace LayerTools.Sheets.Text;

/// <summary>
/// Puts mixed left-to-right and right-to-left text into the order in which it stands on the line. The part of the Unicode
/// Bidirectional Algorithm (UAX #9) that single lines without embedding controls need: strong letters, numbers, neutrals, and rule L2.
/// </summary>
internal static class TextDirections
{
    private enum Strength
    {
        Left,
        Right,
        Number,
        Neutral,
    }

    /// <summary>Runs from left to right as they stand on the line. The first strong letter gives the direction of the line.</summary>
    public static IReadOnlyList<TextRun> Split(string text)
    {
        var clusters = Graphemes.Split(text);
        var strengths = clusters.Select(Classify).ToArray();
        if (!strengths.Contains(Strength.Right)) return [new TextRun(text, false)];
        var lineLevel = strengths.First(strength => strength is Strength.Left or Strength.Right) == Strength.Right ? 1 : 0;
        return Reorder(Join(clusters, FindLevels(strengths, lineLevel)));
    }

    private static int[] FindLevels(Strength[] strengths, int lineLevel)
    {
        var levels = new int[strengths.Length];
        var lastIsRight = lineLevel == 1;
        for (var i = 0; i < strengths.Length; i++)
        {
            if (strengths[i] is Strength.Left or Strength.Right) lastIsRight = strengths[i] == Strength.Right;
            levels[i] = strengths[i] switch
            {
                Strength.Right => 1,
                Strength.Left => lineLevel * 2,
                Strength.Number => lastIsRight ? 2 : lineLevel * 2,
                _ => -1,
            };
        }

        FillNeutrals(strengths, levels, lineLevel);
        return levels;
    }

    /// <summary>Neutrals between two of one direction take it, others that of the line; a number inside right-to-left text counts as part of it.</summary>
    private static void FillNeutrals(Strength[] strengths, int[] levels, int lineLevel)
    {
        for (var start = 0; start < levels.Length; start++)
        {
            if (levels[start] >= 0) continue;
            var end = start;
            while (end < levels.Length && levels[end] < 0) end++;
            var before = start == 0 ? lineLevel == 1 : IsRight(start - 1);
            var after = end == levels.Length ? lineLevel == 1 : IsRight(end);
            var level = before == after ? (before ? 1 : lineLevel * 2) : lineLevel;
            for (var i = start; i < end; i++) levels[i] = level;
            start = end;
        }

        bool IsRight(int index) => strengths[index] == Strength.Right || (strengths[index] == Strength.Number && levels[index] == 2 && FollowsRight(index));

        bool FollowsRight(int index)
        {
            while (index >= 0 && strengths[index] is Strength.Number or Strength.Neutral) index--;
            return index < 0 ? lineLevel == 1 : strengths[index] == Strength.Right;
        }
    }

    private static List<(string Text, int Level)> Join(IReadOnlyList<string> clusters, int[] levels)
    {
        var runs = new List<(string, int)>();
        for (var start = 0; start < levels.Length;)
        {
            var run = new StringBuilder();
            var end = start;
            while (end < levels.Length && levels[end] == levels[start]) run.Append(clusters[end++]);
            runs.Add((run.ToString(), levels[start]));
            start = end;
        }

        return runs;
    }

    /// <summary>Rule L2: from the highest level down, stretches at that level or above are reversed.</summary>
    private static List<TextRun> Reorder(List<(string Text, int Level)> runs)
    {
        for (var level = 2; level >= 1; level--)
        {
            for (var start = 0; start < runs.Count; start++)
            {
                var end = start;
                while (end < runs.Count && runs[end].Level >= level) end++;
                if (end > start) runs.Reverse(start, end - start);
                start = Math.Max(start, end);
            }
        }

        return runs.ConvertAll(run => new TextRun(run.Text, run.Level == 1));
    }

    private static Strength Classify(string cluster)
    {
        var point = Graphemes.CodePoints(cluster).First();
        if (IsRightToLeft(point) && !IsArabicDigit(point)) return Strength.Right;
        return CharUnicodeInfo.GetUnicodeCategory(cluster, 0) switch
        {
            UnicodeCategory.DecimalDigitNumber => Strength.Number,
            UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter or UnicodeCategory.ModifierLetter
                or UnicodeCategory.OtherLetter or UnicodeCategory.LetterNumber or UnicodeCategory.SpacingCombiningMark => Strength.Left,
            _ => Strength.Neutral,
        };
    }

    // Hebrew, Arabic, Syriac, Thaana, N'Ko and their presentation forms, and the right-to-left planes (Unicode Character Database, 'DerivedBidiClass').
    private static bool IsRightToLeft(int point) => point is (>= 0x0590 and <= 0x08FF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFC) or (>= 0x10800 and <= 0x10FFF) or (>= 0x1E800 and <= 0x1EFFF);

    private static bool IsArabicDigit(int point) => point is (>= 0x0660 and <= 0x0669) or (>= 0x06F0 and <= 0x06F9);
}
