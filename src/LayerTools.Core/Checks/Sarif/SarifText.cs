using LayerTools.Images;
using LayerTools.Names;

namespace LayerTools.Checks.Sarif;

/// <summary>Sentences as plain text messages of SARIF 2.1.0: braces doubled, which would else be placeholders (section 3.11.5), and nothing that would read as a link (section 3.11.6).</summary>
internal static class SarifText
{
    public static string Of(string text)
    {
        var plain = WellFormed.Of(PrintableText.Of(text)).Replace("{", "{{").Replace("}", "}}");
        return plain.Contains("](") ? plain.Replace("[", "\\[").Replace("]", "\\]") : plain;
    }
}
