using System.Collections;
using System.Management.Automation;
using System.Management.Automation.Language;
using LayerTools.Model;

namespace LayerTools.Completion;

/// <summary>Completes something about the layers of the file that the command line is about.</summary>
public abstract class LayerCompleter : IArgumentCompleter
{
    private protected LayerCompleter()
    {
    }

    /// <inheritdoc/>
    public IEnumerable<CompletionResult> CompleteArgument(string commandName, string parameterName, string wordToComplete, CommandAst commandAst, IDictionary fakeBoundParameters)
    {
        var typed = wordToComplete.Trim('\'', '"');
        return CompletionFiles.Find(commandAst, fakeBoundParameters)
            .SelectMany(file => file.GetLayers())
            .Select(layer => (Text: GetText(layer), Layer: layer))
            .Where(found => Fits(found.Layer, typed, parameterName))
            .GroupBy(found => found.Text, StringComparer.Ordinal)
            .Select(group => new CompletionResult(Quote(ToPattern(group.Key)), group.Key, CompletionResultType.ParameterValue, Describe(group.First().Layer)))
            .ToList();
    }

    /// <summary>Whether a layer is offered for what was typed so far.</summary>
    private protected virtual bool Fits(Layer layer, string typed, string parameterName) => GetText(layer).StartsWith(typed, StringComparison.OrdinalIgnoreCase);

    /// <summary>What is completed of a layer.</summary>
    private protected abstract string GetText(Layer layer);

    /// <summary>The text as the parameter wants it.</summary>
    private protected virtual string ToPattern(string text) => WildcardPattern.Escape(text);

    private static string Describe(Layer layer) => $"{layer.LayerPath} ({Views.Describe(layer.Kind)}, {Views.DescribeMark(layer)})";

    private static string Quote(string text) => $"'{CodeGeneration.EscapeSingleQuotedStringContent(text)}'";
}
