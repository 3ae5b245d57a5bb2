namespace LayerTools.Sheets.Pages;

/// <summary>Says in the title block what scale and view mean.</summary>
internal static class SheetNotes
{
    public static string Describe(SheetOptions options, SheetGrid grid, CellDrawing drawing)
    {
        var notes = new List<string>();
        var what = options.Content.ToString().ToLowerInvariant();
        if (options.View != SheetView.InPlace)
        {
            notes.Add(drawing.CommonScale is { } scale
                ? $"all at the same scale, {PartFit.At(new LayerTools.Model.Bounds(0, 0, 1, 1), scale, options.Enlarge).Percent}"
                : options.Enlarge ? $"each {what} as large as fits, by whole numbers above 100 %" : $"each {what} as large as fits, at most 100 %");
        }

        if (grid.Density > 1) notes.Add(FormattableString.Invariant($"100 % is {96 * grid.Density} px an inch"));
        if (options.View == SheetView.Both) notes.Add("on the right in place");
        if (options.View == SheetView.InPlace) notes.Add($"each {what} in its place, the figure faded");
        if (options.Arrangement == SheetArrangement.Pairs) notes.Add("pairs side by side");
        return string.Join(" \u00B7 ", notes);
    }
}
