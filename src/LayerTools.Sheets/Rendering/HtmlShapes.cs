using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Rendering;

/// <summary>The small shapes beside the words of a state, as SVG. Words stand beside them, so they are hidden from screen readers.</summary>
internal static class HtmlShapes
{
    public static string Draw(StateShape shape, Rgb? fill)
    {
        var inside = fill?.ToString() ?? "none";
        var drawn = shape switch
        {
            StateShape.Disc => $"<circle cx=\"6\" cy=\"6\" r=\"5\" fill=\"{fill?.ToString() ?? "currentColor"}\" stroke=\"currentColor\"/>",
            StateShape.Ring => $"<circle cx=\"6\" cy=\"6\" r=\"2.7\" fill=\"{inside}\"/><circle cx=\"6\" cy=\"6\" r=\"5\" fill=\"none\" stroke=\"currentColor\"/>",
            StateShape.Square => $"<rect x=\"1\" y=\"1\" width=\"10\" height=\"10\" fill=\"{inside}\" stroke=\"currentColor\"/>",
            StateShape.Cross => "<path d=\"M1 1 11 11M1 11 11 1\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.5\"/>",
            _ => $"<rect x=\"1\" y=\"4\" width=\"10\" height=\"4\" fill=\"{inside}\" stroke=\"currentColor\"/>",
        };
        return $"<svg width=\"12\" height=\"12\" viewBox=\"0 0 12 12\" aria-hidden=\"true\">{drawn}</svg>";
    }
}
