using System.Globalization;
using System.Management.Automation;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Binding;

/// <summary>Runs a user's script block for one layer.</summary>
internal static class LayerScript
{
    /// <summary>The text that the script block gives with the layer as <c>$_</c>; null if it gives nothing.</summary>
    /// <exception cref="RefusedException">The script block failed, or gave more than one value.</exception>
    public static string? Invoke(ScriptBlock script, Layer layer)
    {
        IReadOnlyList<PSObject> results;
        try
        {
            results = script.InvokeWithContext(null, [new PSVariable("_", layer), new PSVariable("PSItem", layer)], layer);
        }
        catch (RuntimeException error) when (error is not PipelineStoppedException)
        {
            throw new RefusedException(ErrorRecords.ScriptFailed(layer.FilePath, layer.LayerPath, error, layer));
        }

        var values = results.Where(result => result is not null).Select(result => Convert.ToString(result.BaseObject, CultureInfo.InvariantCulture)).ToList();
        if (values.Count > 1)
        {
            throw new RefusedException(ErrorRecords.BadArgument("ScriptGaveMany",
                $"{layer.FilePath}: The script block gave {values.Count.ToString(CultureInfo.InvariantCulture)} values for the layer '{PrintableText.Of(layer.LayerPath)}', and a layer has one name. Nothing in this file was changed.", layer));
        }

        return values.FirstOrDefault();
    }
}
