using System.Collections;
using System.Management.Automation;
using System.Management.Automation.Language;
using LayerTools.Ledgers;

namespace LayerTools.Completion;

/// <summary>Completes ledgers: their files, and folders.</summary>
public sealed class LayerLedgerCompleter : IArgumentCompleter
{
    /// <inheritdoc/>
    public IEnumerable<CompletionResult> CompleteArgument(string commandName, string parameterName, string wordToComplete, CommandAst commandAst, IDictionary fakeBoundParameters) =>
        CompletionCompleters.CompleteFilename(wordToComplete.Trim('\'', '"'))
            .Where(file => file.ResultType == CompletionResultType.ProviderContainer || file.ListItemText.EndsWith(LayerLedger.Extension, StringComparison.OrdinalIgnoreCase));
}
