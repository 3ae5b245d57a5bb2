using System.Collections;
using System.Management.Automation;
using System.Management.Automation.Language;
using LayerTools.Checks;
using LayerTools.Edits.Repair;

namespace LayerTools.Completion;

/// <summary>Completes names of rules; what each asks is shown beside it.</summary>
public sealed class RuleCompleter : IArgumentCompleter
{
    /// <inheritdoc/>
    public IEnumerable<CompletionResult> CompleteArgument(string commandName, string parameterName, string wordToComplete, CommandAst commandAst, IDictionary fakeBoundParameters)
    {
        var pattern = new WildcardPattern(wordToComplete.Trim('\'', '"') + "*", WildcardOptions.IgnoreCase | WildcardOptions.CultureInvariant);
        var rules = string.Equals(commandName, "Repair-LayerFile", StringComparison.OrdinalIgnoreCase) ? RepairEdit.Repairable : CheckRules.All;
        return rules.Where(rule => pattern.IsMatch(rule.Id))
            .Select(rule => new CompletionResult(rule.Id, rule.Id, CompletionResultType.ParameterValue, $"{rule.Title} ({Views.Describe(rule.DefaultSeverity)})"));
    }
}
