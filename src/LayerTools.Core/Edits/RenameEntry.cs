using System.Globalization;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>One row of a list of new names: two names, or a whole row of a change list.</summary>
/// <param name="Old">The name, or the path, that is to change.</param>
/// <param name="New">The name it becomes.</param>
/// <param name="Id">The layer's id, where known.</param>
/// <param name="LayerNumber">The layer's number, where known.</param>
/// <param name="LayerPath">The layer's path before the change, where known.</param>
public sealed record RenameEntry(string Old, string New, int? Id = null, int? LayerNumber = null, string? LayerPath = null)
{
    /// <summary>What changed, in a change list; rows about anything but names are passed over.</summary>
    public string Property { get; init; } = RenameEdit.Property;

    internal bool IsAboutName => string.Equals(Property, RenameEdit.Property, StringComparison.OrdinalIgnoreCase);

    internal bool PointsAtOneLayer => Id is not null || LayerNumber is not null || LayerPath is not null;

    internal RenameEntry Reversed => this with { Old = New, New = Old };

    /// <summary>The row that undoes or repeats a change.</summary>
    public static RenameEntry From(Change change)
    {
        if (change is null) throw new ArgumentNullException(nameof(change));
        return new RenameEntry(change.Old ?? string.Empty, change.New ?? string.Empty, change.Id, change.LayerNumber, change.LayerPath) { Property = change.Property };
    }

    /// <summary>Reads a row of text columns, as CSV files have them: Old and New, and where there are such columns Id, LayerNumber, LayerPath and Property. Empty ones count as missing.</summary>
    /// <param name="column">Gives the text of a column, or null where the row has no such column.</param>
    /// <exception cref="LayeredFileException">A column is missing or is not a number.</exception>
    public static RenameEntry FromColumns(Func<string, string?> column)
    {
        if (column is null) throw new ArgumentNullException(nameof(column));
        var entry = new RenameEntry(column(nameof(Old)) ?? throw MissingColumn(nameof(Old)), column(nameof(New)) ?? throw MissingColumn(nameof(New)),
            ReadNumber(column, nameof(Id)), ReadNumber(column, nameof(LayerNumber)), column(nameof(LayerPath)) is { Length: > 0 } path ? path : null);
        return column(nameof(Property)) is { Length: > 0 } property ? entry with { Property = property } : entry;
    }

    private static int? ReadNumber(Func<string, string?> column, string name)
    {
        if (column(name) is not { Length: > 0 } text) return null;
        return int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) ? number
            : throw Error($"The column {name} says '{text}', which is not a whole number.", "Correct the list.");
    }

    private static LayeredFileException MissingColumn(string name) =>
        Error($"A row has no column {name}.", "A list of new names needs the columns Old and New.");

    private static LayeredFileException Error(string problem, string remedy) => new(LayeredFileErrorKind.EditRefused, null, "list of new names", -1, problem, remedy);
}
