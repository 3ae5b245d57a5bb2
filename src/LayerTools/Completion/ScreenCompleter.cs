using System.Collections;
using System.Globalization;
using System.Management.Automation;
using System.Management.Automation.Language;
using LayerTools.Profiles;

namespace LayerTools.Completion;

/// <summary>Completes screens: those of the profile by name, and usual sizes.</summary>
public sealed class ScreenCompleter : IArgumentCompleter
{
    private static readonly (string Size, string Meaning)[] Sizes =
    [
        ("1280x720", "HD"),
        ("1920x1080", "Full HD"),
        ("2560x1440", "QHD"),
        ("3840x2160", "4K UHD"),
        ("1080x1920", "A phone, upright"),
    ];

    /// <inheritdoc/>
    public IEnumerable<CompletionResult> CompleteArgument(string commandName, string parameterName, string wordToComplete, CommandAst commandAst, IDictionary fakeBoundParameters)
    {
        var profile = fakeBoundParameters["Profile"] as LayerProfile ?? LayerProfiles.Default;
        var typed = wordToComplete.Trim('\'', '"');
        return profile.Screens
            .Select(screen => (Text: $"'{CodeGeneration.EscapeSingleQuotedStringContent(screen.Name)}'", screen.Name, Meaning: string.Format(CultureInfo.InvariantCulture, "{0} x {1} px", screen.Width, screen.Height)))
            .Concat(Sizes.Select(item => (Text: item.Size, Name: item.Size, item.Meaning)))
            .Where(item => item.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
            .Select(item => new CompletionResult(item.Text, item.Name, CompletionResultType.ParameterValue, item.Meaning));
    }
}
