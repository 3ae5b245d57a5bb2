using LayerTools.Model;

namespace LayerTools.Checks;

/// <summary>
/// Commands that put something right, whole, so that they can be pasted as they are: from <c>Get-LayerFile</c> with the file's full path on. Those that edit
/// end with a save in place that first puts a copy into a folder <c>before</c> beside the file, so that several can be pasted one after another.
/// </summary>
internal static class Remedy
{
    private const string BackupFolder = "before";

    /// <summary>A command that edits the file and saves it.</summary>
    /// <param name="file">The file.</param>
    /// <param name="command">The edit, with its arguments: <c>Set-LayerCanvas -Width 5000</c>; names in it go through <see cref="Quoted"/>.</param>
    public static string Edit(LayerFile file, string command) =>
        $"{Show(file, command)} | Save-LayerFile -InPlace -BackupFolder {Quoted.Of(Path.Combine(Path.GetDirectoryName(file.Path) ?? string.Empty, BackupFolder))}";

    /// <summary>A command that edits one layer and saves its file.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="command">The edit; the choice of the layer is put behind it, so that it has to take <c>-LiteralLayerPath</c> and <c>-LayerNumber</c>.</param>
    public static string Edit(Layer layer, string command) => Edit(layer.GetFile()!, $"{command} {Choose(layer)}");

    /// <summary>A command that shows something, and changes nothing.</summary>
    public static string Show(LayerFile file, string command) => $"Get-LayerFile -LiteralPath {Quoted.Of(file.Path)} | {command}";

    /// <summary>Arguments that choose one layer: by its path, or by its number where layers share the path.</summary>
    public static string Choose(Layer layer) => layer.GetFile()!.GetLayers().Count(other => other.Name == layer.Name && other.LayerPath == layer.LayerPath) == 1
        ? $"-LiteralLayerPath {Quoted.Of(layer.LayerPath)}"
        : FormattableString.Invariant($"-LayerNumber {layer.LayerNumber}");
}
