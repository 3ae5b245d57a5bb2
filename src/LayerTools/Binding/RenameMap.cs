using System.Collections;
using System.Globalization;
using System.Management.Automation;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>Reads old and new names from whatever a user has them in.</summary>
internal static class RenameMap
{
    /// <exception cref="RefusedException">Something in the map is no list of names, or a CSV file cannot be read.</exception>
    /// <exception cref="Errors.LayeredFileException">A row has no column Old or New.</exception>
    public static IReadOnlyList<RenameEntry> Read(PSCmdlet cmdlet, IEnumerable<object> map) => map.SelectMany(item => ReadItem(cmdlet, item)).ToList();

    private static IEnumerable<RenameEntry> ReadItem(PSCmdlet cmdlet, object item)
    {
        var wrapped = PSObject.AsPSObject(item);
        return wrapped.BaseObject switch
        {
            IDictionary table => table.Cast<DictionaryEntry>().Select(entry => new RenameEntry(ToText(entry.Key), ToText(entry.Value))),
            string path => ReadCsv(cmdlet, path),
            FileInfo file => ReadCsv(cmdlet, WildcardPattern.Escape(file.FullName)),
            Change change => [RenameEntry.From(change)],
            IEnumerable items => items.Cast<object>().SelectMany(inner => ReadItem(cmdlet, inner)),
            _ when StaysAsItIs(wrapped) => [],
            _ => [RenameEntry.FromColumns(name => GetColumn(wrapped, name))],
        };
    }

    private static List<RenameEntry> ReadCsv(PSCmdlet cmdlet, string path)
    {
        var files = PathResolver.Resolve(cmdlet, path);
        if (files.Count == 0) throw new RefusedException(ErrorRecords.PathNotFound(path));
        try
        {
            return files.SelectMany(ReadRows).Where(row => !StaysAsItIs(row)).Select(row => RenameEntry.FromColumns(name => GetColumn(row, name))).ToList();
        }
        catch (LayeredFileException error) when (error.Path is null)
        {
            throw new LayeredFileException(error.Kind, path, error.Section, error.Offset, error.Problem, error.Remedy);
        }
        catch (RuntimeException error) when (error is not PipelineStoppedException)
        {
            throw new RefusedException(ErrorRecords.BadArgument("BadMap", $"{path}: This list of names cannot be read: {error.Message}", path));
        }
    }

    /// <summary>Reads with the shell's own reader, so that what Export-Csv wrote comes back, type line and byte order mark included.</summary>
    private static IEnumerable<PSObject> ReadRows(string file)
    {
        var reader = ScriptBlock.Create("param($path, $delimiter) Microsoft.PowerShell.Utility\\Import-Csv -LiteralPath $path -Delimiter $delimiter -Encoding utf8 -ErrorAction Stop");
        var rows = reader.Invoke(file, ',');
        // Spreadsheets write semicolons or tabs where the machine's language has the comma for decimals.
        var header = rows.FirstOrDefault()?.Properties.Select(property => property.Name).ToList();
        return header is [var only] && only.IndexOfAny([';', '\t']) is >= 0 and var place ? reader.Invoke(file, only[place]) : rows;
    }

    /// <summary>Whether a row is one of a preview that only says why a name is left as it is.</summary>
    private static bool StaysAsItIs(PSObject row) =>
        GetColumn(row, nameof(NormalizePreview.Why)) is { Length: > 0 } && string.IsNullOrEmpty(GetColumn(row, nameof(NormalizePreview.New)));

    private static string? GetColumn(PSObject row, string name) => row.Properties[name] is { } property ? ToText(property.Value) : null;

    private static string ToText(object? value) => Convert.ToString(value is PSObject wrapped ? wrapped.BaseObject : value, CultureInfo.InvariantCulture) ?? string.Empty;
}
