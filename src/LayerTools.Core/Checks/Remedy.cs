using LayerTools.Model;
using LayerTools.Profiles;

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

    /// <summary>The command that puts right what a rule finds, by the profile that it was asked with.</summary>
    /// <param name="context">What was asked.</param>
    /// <param name="rule">The id of the rule, one of those that Repair-LayerFile takes.</param>
    public static string Repair(CheckContext context, string rule) => Edit(context.File, $"Repair-LayerFile -Rule {rule}{ProfileArgument(context.Profile)}");

    /// <summary>The argument that names a profile, with a space before it; empty for the one that holds where none is named.</summary>
    public static string ProfileArgument(LayerProfile profile)
    {
        if (profile.Path is { } path) return $" -Profile {Quoted.Of(path)}";
        return profile.Name != LayerProfiles.Default.Name && LayerProfiles.FindShipped(profile.Name) is not null ? $" -Profile {Quoted.Of(profile.Name)}" : string.Empty;
    }

    /// <summary>A command that shows something, and changes nothing.</summary>
    public static string Show(LayerFile file, string command) => $"Get-LayerFile -LiteralPath {Quoted.Of(file.Path)} | {command}";

    /// <summary>Arguments that choose one layer: by its path, or by its number where layers might share the path.</summary>
    public static string Choose(Layer layer) => HasOwnPath(layer) ? $"-LiteralLayerPath {Quoted.Of(layer.LayerPath)}" : FormattableString.Invariant($"-LayerNumber {layer.LayerNumber}");

    /// <summary>Whether no other layer has the path, as far as names tell that without the paths of all layers, which take long to put together in files with thousands of them.</summary>
    private static bool HasOwnPath(Layer layer)
    {
        for (var at = layer; at.Parent is { } parent; at = parent)
        {
            if (at.Name.Contains('\\') || parent.GetChildren().Any(other => other != at && IsAlike(other.Name, at.Name))) return false;
        }

        return true;
    }

    /// <summary>Whether paths through both names can read the same: a slash in a name is written as \/, as is a backslash at the end of a group's name with the slash behind it.</summary>
    private static bool IsAlike(string one, string other) => one == other || (one is [.., '\\'] && other.Contains('/'));
}
