namespace LayerTools.Sheets.Pages;

/// <summary>How the colours under a part are laid out.</summary>
internal enum GroundPattern
{
    Plain,
    Checker,
    Halves,
}
