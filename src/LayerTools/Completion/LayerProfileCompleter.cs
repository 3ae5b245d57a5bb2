using System.Collections;
using System.Management.Automation;
using System.Management.Automation.Language;
using LayerTools.Profiles;

namespace LayerTools.Completion;

/// <summary>Completes profiles: the names of those that ship with the module, then the files of the folder.</summary>
public sealed class LayerProfileCompleter : IArgumentCompleter
{
    /// <inheritdoc/>
    public IEnumerable<CompletionResult> CompleteArgument(string commandName, string parameterName, string wordToComplete, CommandAst commandAst, IDictionary fakeBoundParameters)
    {
        var word = wordToComplete.Trim('\'', '"');
        foreach (var profile in LayerProfiles.Shipped.Where(profile => profile.Name.StartsWith(word, StringComparison.OrdinalIgnoreCase)))
        {
            yield return new CompletionResult(profile.Name, profile.Name, CompletionResultType.ParameterValue, profile.Description);
        }

        foreach (var file in CompletionCompleters.CompleteFilename(word))
        {
            var isFolder = file.ResultType == CompletionResultType.ProviderContainer;
            if (isFolder || file.ListItemText.EndsWith(LayerProfiles.Extension, StringComparison.OrdinalIgnoreCase)) yield return file;
        }
    }
}
