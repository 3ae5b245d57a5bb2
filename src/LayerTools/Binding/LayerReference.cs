using System.Globalization;
using System.Management.Automation;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>Finds the one layer that a user means.</summary>
internal static class LayerReference
{
    /// <summary>The layer with a path, else the only one with a name, or with a number, or the layer itself.</summary>
    /// <exception cref="RefusedException">There is no such layer in the file, or more than one.</exception>
    public static Layer Find(LayerFile file, object reference) => PSObject.AsPSObject(reference).BaseObject switch
    {
        Layer layer => layer,
        int number => file.GetLayers().FirstOrDefault(layer => layer.LayerNumber == number)
            ?? throw new RefusedException(ErrorRecords.LayerNotFound(file.Name, $"number {number.ToString(CultureInfo.InvariantCulture)}", file)),
        var other => FindByText(file, Convert.ToString(other, CultureInfo.InvariantCulture) ?? string.Empty),
    };

    private static Layer FindByText(LayerFile file, string text)
    {
        var found = Matches(file, text, layer => layer.LayerPath, StringComparer.Ordinal)
            ?? Matches(file, text, layer => layer.LayerPath, StringComparer.OrdinalIgnoreCase)
            ?? Matches(file, text, layer => layer.Name, StringComparer.OrdinalIgnoreCase)
            ?? throw new RefusedException(ErrorRecords.LayerNotFound(file.Name, $"with the path or the name '{text}'", file));
        if (found.Count == 1) return found[0];
        throw new RefusedException(ErrorRecords.LayerAmbiguous(file.Name, text, found, file));
    }

    private static List<Layer>? Matches(LayerFile file, string text, Func<Layer, string> property, StringComparer comparer)
    {
        var found = file.GetLayers().Where(layer => comparer.Equals(property(layer), text)).ToList();
        return found.Count == 0 ? null : found;
    }
}
