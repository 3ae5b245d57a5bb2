using System.Management.Automation;
using LayerTools.Ledgers;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>Finds the ledgers of a layered file: the one beside it, or those in the files and folders that a user names.</summary>
internal static class LedgerReference
{
    /// <summary>The ledger that belongs to a file in a folder, be it there or not.</summary>
    public static string FindIn(string folder, LayerFile file) => Path.Combine(folder, Path.GetFileName(LayerLedger.FindPath(file.Path)));

    /// <summary>The path to write a file's ledger to.</summary>
    /// <param name="command">The cmdlet.</param>
    /// <param name="destination">A file, if it has an extension and is no folder; else a folder; null for beside the layered file.</param>
    /// <param name="file">The layered file.</param>
    /// <exception cref="RefusedException">It ends like another kind of file.</exception>
    public static string Locate(PSCmdlet command, string? destination, LayerFile file)
    {
        if (destination is null) return LayerLedger.FindPath(file.Path);
        var path = PathResolver.ResolveLiteral(command, destination);
        if (Path.GetExtension(path).Length == 0 || Directory.Exists(path)) return Path.GetFullPath(FindIn(path, file));
        if (Path.GetExtension(path).Equals(".json", StringComparison.OrdinalIgnoreCase)) return Path.GetFullPath(path);
        throw new RefusedException(ErrorRecords.BadArgument("NotALedger", $"{path}: Ledgers are written as JSON. Let the path end in {LayerLedger.Extension}, or make the folder of this name first.", path));
    }

    /// <summary>The ledgers of a file. Of folders, those that have one for it.</summary>
    /// <param name="command">The cmdlet.</param>
    /// <param name="references">Paths of ledgers, wildcards allowed, or of folders; null for the ledger beside the file, if there is one.</param>
    /// <param name="file">The layered file.</param>
    /// <exception cref="RefusedException">A path that was named is not there.</exception>
    /// <exception cref="Errors.LayeredFileException">A file is no ledger.</exception>
    public static IReadOnlyList<LayerLedger> Read(LayerToolsCommand command, IReadOnlyList<string>? references, LayerFile file)
    {
        var paths = references is null ? [LayerLedger.FindPath(file.Path)] : references.SelectMany(reference => PathResolver.Resolve(command, reference)).Select(path => Directory.Exists(path) ? FindIn(path, file) : path);
        return ReadExisting(command, [.. references is null ? paths.Where(File.Exists) : paths], file);
    }

    /// <summary>The ledgers at paths, those of them that are there, each once.</summary>
    public static IReadOnlyList<LayerLedger> ReadExisting(LayerToolsCommand command, IReadOnlyList<string> paths, LayerFile file)
    {
        var ledgers = new List<LayerLedger>();
        foreach (var path in paths.Distinct(StringComparer.Ordinal))
        {
            if (!File.Exists(path))
            {
                command.WriteVerbose($"{path}: There is no ledger here.");
                continue;
            }

            var ledger = LedgerFile.Read(path);
            if (!string.Equals(ledger.File, file.Name, StringComparison.OrdinalIgnoreCase)) command.WriteWarnings(Path.GetFileName(path), [$"The ledger was written for '{ledger.File}', and is read for '{file.Name}'."]);
            ledgers.Add(ledger);
        }

        return ledgers;
    }

    /// <summary>Warns of what people said differently.</summary>
    public static void WriteClashes(LayerToolsCommand command, LayerFile file, IEnumerable<LedgerClash> clashes) => command.WriteWarnings(file.Name, clashes.Select(clash =>
        $"'{clash.LayerPath}' is {Views.Describe(clash.State)} {Views.DescribeAuthor(clash.Who, clash.When)}; it was {Views.Describe(clash.OtherState)} {Views.DescribeAuthor(clash.OtherWho, clash.OtherWhen)}. The later one holds."));
}
