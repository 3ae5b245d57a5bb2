using System.Globalization;
using LayerTools.Model;

namespace LayerTools.Text;

/// <summary>Writes a layer tree as aligned lines. Everything is said in words; colour only repeats it.</summary>
internal static class LayerTreeText
{
    private const string Gap = "  ";

    // One endless name must not push the marks of all other layers off the screen; its own row grows instead.
    private const int WidestColumn = 60;

    private static readonly string[] Titles = ["No", "Layer", "Kind", "Side", "Size", "Mark", "State"];

    public static IReadOnlyList<string> Format(LayerFile file, IReadOnlyList<Layer> layers, bool useColor)
    {
        var rows = layers.Select(layer => (Layer: layer, Cells: GetCells(layer))).ToList();
        var widths = Titles.Select((title, column) => rows.Select(row => TextWidth.Measure(row.Cells[column])).Append(title.Length).Where(width => width <= WidestColumn).Max()).ToArray();
        List<string> lines = [DescribeFile(file), Join(Titles, widths)];
        lines.AddRange(rows.Select(row => Join(useColor ? Color(row.Layer, row.Cells) : row.Cells, widths, row.Cells)));
        if (layers.Count < file.LayerCount) lines.Add(FormattableString.Invariant($"{layers.Count} of {Views.Count(file.LayerCount, "layer")} shown"));
        return lines;
    }

    private static string DescribeFile(LayerFile file)
    {
        var parts = new List<string>
        {
            file.Name,
            Views.DescribeSize(file.Width, file.Height) + " px",
            Views.DescribeMode(file),
            FormattableString.Invariant($"centre line x = {file.Axis}"),
            Views.Count(file.LayerCount, "layer"),
        };
        if (file.Ppi is not null) parts.Insert(2, Views.DescribePpi(file) + " ppi");
        if (file.PendingCount > 0) parts.Add(Views.Count(file.PendingCount, "edit") + " not saved yet");
        return string.Join(" | ", parts);
    }

    private static string[] GetCells(Layer layer) =>
    [
        layer.LayerNumber.ToString(CultureInfo.InvariantCulture),
        Views.IndentName(layer),
        Views.Describe(layer.Kind),
        Views.DescribeSide(layer.Side),
        layer.Width == 0 || layer.Height == 0 ? "empty" : Views.DescribeSize(layer.Width, layer.Height),
        Views.Describe(layer.Mark),
        Views.DescribeState(layer),
    ];

    private static string[] Color(Layer layer, string[] cells)
    {
        var colored = (string[])cells.Clone();
        colored[1] = layer.EffectivelyVisible ? colored[1] : TerminalColor.Dim(colored[1]);
        colored[5] = TerminalColor.Paint(colored[5], layer.Mark);
        return colored;
    }

    private static string Join(string[] cells, int[] widths, string[]? plain = null) =>
        string.Join(Gap, cells.Select((cell, column) =>
        {
            var padding = new string(' ', Math.Max(0, widths[column] - TextWidth.Measure((plain ?? cells)[column])));
            return column == 0 ? padding + cell : cell + padding;
        })).TrimEnd();
}
