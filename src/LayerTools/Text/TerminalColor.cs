using LayerTools.Model;

namespace LayerTools.Text;

/// <summary>Colours of a terminal, as ECMA-48 'select graphic rendition' writes them.</summary>
internal static class TerminalColor
{
    private const string Reset = "\u001b[0m";

    public static string Dim(string text) => text.Length == 0 ? text : $"\u001b[2m{text}{Reset}";

    /// <summary>Writes a mark's word in a colour near the mark's; orange has none of its own and takes the 256-colour palette.</summary>
    public static string Paint(string text, Mark mark) => mark switch
    {
        _ when text.Length == 0 => text,
        Mark.Red => $"\u001b[31m{text}{Reset}",
        Mark.Orange => $"\u001b[38;5;208m{text}{Reset}",
        Mark.Yellow => $"\u001b[33m{text}{Reset}",
        Mark.Green => $"\u001b[32m{text}{Reset}",
        Mark.Blue => $"\u001b[34m{text}{Reset}",
        Mark.Violet => $"\u001b[35m{text}{Reset}",
        Mark.Gray => $"\u001b[90m{text}{Reset}",
        _ => text,
    };
}
