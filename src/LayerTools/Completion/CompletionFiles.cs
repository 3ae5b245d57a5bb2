using System.Collections;
using System.Management.Automation;
using System.Management.Automation.Language;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Completion;

/// <summary>Finds the layered files that a half-typed command line is about, without running any of it.</summary>
internal static class CompletionFiles
{
    /// <summary>Reading more files than these while somebody waits for a word helps nobody.</summary>
    private const int MostFiles = 8;

    public static IReadOnlyList<LayerFile> Find(CommandAst command, IDictionary boundParameters)
    {
        if (boundParameters["InputObject"] is { } given) return FromValue(given);
        if ((boundParameters["Path"] ?? boundParameters["LiteralPath"]) is { } path && command.GetCommandName() is not "Export-LayerSheet") return FromPaths(path, boundParameters.Contains("LiteralPath"));
        return command.Parent is PipelineAst pipeline ? pipeline.PipelineElements.TakeWhile(element => element != command).Select(FromElement).FirstOrDefault(found => found.Count > 0) ?? [] : [];
    }

    private static List<LayerFile> FromElement(CommandBaseAst element) => element switch
    {
        CommandExpressionAst { Expression: var expression } => FromExpression(expression),
        CommandAst command => FromCommand(command),
        _ => [],
    };

    private static List<LayerFile> FromCommand(CommandAst command)
    {
        var isLiteral = command.CommandElements.OfType<CommandParameterAst>().Any(parameter => string.Equals(parameter.ParameterName, "LiteralPath", StringComparison.OrdinalIgnoreCase));
        var name = command.GetCommandName();
        if (name is null || command.CommandElements.Skip(1).OfType<ExpressionAst>().FirstOrDefault() is not { } first) return [];
        return name.ToUpperInvariant() switch
        {
            "GET-LAYERFILE" or "GET-LAYER" or "GET-CHILDITEM" or "GET-ITEM" or "DIR" or "LS" or "GCI" or "GI" when first is StringConstantExpressionAst text => FromPaths(text.Value, isLiteral),
            "GET-LAYERFILE" or "GET-LAYER" => FromExpression(first),
            _ => [],
        };
    }

    private static List<LayerFile> FromExpression(ExpressionAst expression) => expression switch
    {
        VariableExpressionAst variable when GetVariable(variable.VariablePath.UserPath) is { } value => FromValue(value),
        StringConstantExpressionAst text => FromPaths(text.Value, isLiteral: false),
        _ => [],
    };

    private static object? GetVariable(string name) =>
        ScriptBlock.Create("param($name) , (Microsoft.PowerShell.Utility\\Get-Variable -Name ([WildcardPattern]::Escape($name)) -ValueOnly -ErrorAction Ignore)").Invoke(name).FirstOrDefault()?.BaseObject;

    private static List<LayerFile> FromValue(object value)
    {
        var items = LanguagePrimitives.GetEnumerable(value)?.Cast<object>() ?? [value];
        return items.Select(item => item is PSObject wrapped ? wrapped.BaseObject : item)
            .SelectMany(item => item switch
            {
                LayerFile file => [file],
                Layer layer when layer.GetFile() is { } file => [file],
                FileInfo file => FromPaths(file.FullName, isLiteral: true),
                string path => FromPaths(path, isLiteral: false),
                _ => (IReadOnlyList<LayerFile>)[],
            })
            .Distinct().Take(MostFiles).ToList();
    }

    private static List<LayerFile> FromPaths(object paths, bool isLiteral)
    {
        var script = ScriptBlock.Create(isLiteral
            ? "param($paths) (Microsoft.PowerShell.Management\\Get-Item -LiteralPath $paths -ErrorAction Ignore).FullName"
            : "param($paths) (Microsoft.PowerShell.Management\\Get-Item -Path $paths -ErrorAction Ignore).FullName");
        return script.Invoke(paths).Select(found => found?.BaseObject).OfType<string>().Take(MostFiles).SelectMany(TryRead).ToList();
    }

    private static IReadOnlyList<LayerFile> TryRead(string path)
    {
        try
        {
            return [LayerFiles.Read(path)];
        }
        catch (LayeredFileException)
        {
            // A file that cannot be read has no names to offer; the command itself will say why.
            return [];
        }
    }
}
