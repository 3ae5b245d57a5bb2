using System.Globalization;
using System.Text;
using LayerTools.Edits.Repair;

namespace LayerTools.Checks;

/// <summary>The help page about all rules, made from the catalogue.</summary>
internal static class RulesPage
{
    private const int LineLength = 110;

    /// <summary>The page, with line feeds.</summary>
    public static string Write()
    {
        var page = new StringBuilder();
        page.Append(
            """

            TOPIC
                about_LayerTools_Checks

            SHORT DESCRIPTION
                The rules that Test-LayerFile asks, and those whose findings Repair-LayerFile puts right.

            LONG DESCRIPTION
                Each rule has a severity: an error has to be put right before a file is handed over, a warning should be, a note is
                worth knowing. A profile changes the severity of a rule or switches it off, and moves its limit. Repair-LayerFile
                puts right what the rules marked "can be repaired" find.

            RULES

            """.Replace("\r\n", "\n"));
        foreach (var rule in CheckRules.All)
        {
            page.Append("    ").Append(rule.Id).Append('\n');
            AddLines(page, rule.Title + ".");
            AddLines(page, rule.Reason);
            AddLines(page, Describe(rule));
            page.Append('\n');
        }

        page.Append("SEE ALSO\n    Test-LayerFile\n    Repair-LayerFile\n    Get-LayerProfile\n    about_LayerTools\n");
        return page.ToString();
    }

    private static string Describe(CheckRule rule)
    {
        var words = new StringBuilder(rule.DefaultSeverity == Severity.None ? "Off unless asked for" : rule.DefaultSeverity.ToString());
        if (rule.DefaultLimit is { } limit) words.Append("; limit ").Append(limit.ToString("0.###", CultureInfo.InvariantCulture)).Append(' ').Append(rule.LimitUnit);
        if (rule.NeedsPixels) words.Append("; needs pixels");
        if (RepairEdit.Repairable.Contains(rule)) words.Append("; can be repaired");
        return words.Append('.').ToString();
    }

    private static void AddLines(StringBuilder page, string text)
    {
        const string Indent = "        ";
        var length = LineLength + 1;
        foreach (var word in text.Split(' '))
        {
            if (length + 1 + word.Length > LineLength)
            {
                if (page[page.Length - 1] != '\n') page.Append('\n');
                page.Append(Indent).Append(word);
                length = Indent.Length + word.Length;
            }
            else
            {
                page.Append(' ').Append(word);
                length += 1 + word.Length;
            }
        }

        page.Append('\n');
    }
}
