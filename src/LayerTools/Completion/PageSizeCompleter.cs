using System.Collections;
using System.Management.Automation;
using System.Management.Automation.Language;

namespace LayerTools.Completion;

/// <summary>Completes the sizes of a sheet's pages.</summary>
public sealed class PageSizeCompleter : IArgumentCompleter
{
    private static readonly (string Word, string Meaning)[] Words =
    [
        ("A4", "210 x 297 mm"),
        ("A3", "297 x 420 mm"),
        ("Letter", "8.5 x 11 inches"),
        ("Screen", "1920 x 1080 px"),
        ("1600x1200", "Any number of pixels"),
    ];

    /// <inheritdoc/>
    public IEnumerable<CompletionResult> CompleteArgument(string commandName, string parameterName, string wordToComplete, CommandAst commandAst, IDictionary fakeBoundParameters) =>
        Words.Where(item => item.Word.StartsWith(wordToComplete, StringComparison.OrdinalIgnoreCase))
            .Select(item => new CompletionResult(item.Word, item.Word, CompletionResultType.ParameterValue, item.Meaning));
}
