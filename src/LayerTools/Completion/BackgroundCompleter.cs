using System.Collections;
using System.Management.Automation;
using System.Management.Automation.Language;

namespace LayerTools.Completion;

/// <summary>Completes the words for what a sheet's parts stand on.</summary>
public sealed class BackgroundCompleter : IArgumentCompleter
{
    private static readonly (string Word, string Meaning)[] Words =
    [
        ("grey", "Mid grey"),
        ("checker", "A board of two greys"),
        ("halves", "A light and a dark half, where soft edges and halos show"),
        ("'#ffffff'", "Any colour, as #rrggbb or #rgb in quotes"),
    ];

    /// <inheritdoc/>
    public IEnumerable<CompletionResult> CompleteArgument(string commandName, string parameterName, string wordToComplete, CommandAst commandAst, IDictionary fakeBoundParameters) =>
        Words.Where(item => item.Word.StartsWith(wordToComplete, StringComparison.OrdinalIgnoreCase))
            .Select(item => new CompletionResult(item.Word, item.Word, CompletionResultType.ParameterValue, item.Meaning));
}
