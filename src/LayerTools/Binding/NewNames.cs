using System.Globalization;
using System.Management.Automation;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>What a user gives as the new name of layers: a text, or a script block that makes it of each layer.</summary>
internal static class NewNames
{
    /// <summary>The new name of one layer; null if the script block gives none.</summary>
    /// <exception cref="RefusedException">The script block failed, or gave more than one value.</exception>
    public static string? For(Layer layer, object given) => PSObject.AsPSObject(given).BaseObject switch
    {
        ScriptBlock script => LayerScript.Invoke(script, layer),
        var text => Convert.ToString(text, CultureInfo.InvariantCulture),
    };
}
