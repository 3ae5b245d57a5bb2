using System.Globalization;
using LayerTools.Figure.Parts;

namespace LayerTools.Figure;

/// <summary>What the command line asks for.</summary>
/// <param name="Path">The layered file.</param>
/// <param name="Layers">How many layers besides groups; null for the figure as it was drawn.</param>
/// <param name="Scale">Size of the canvas, 1 = 5000 x 6000 px.</param>
/// <param name="PngPath">Where to show the file's merged picture.</param>
/// <param name="IsDrawn">Whether the file is there already and only its picture is wanted.</param>
internal sealed record FigureOptions(string Path, int? Layers, float Scale, string? PngPath, bool IsDrawn)
{
    public const string Usage = "usage: dotnet run --project tests/Figure -- <file.psd> [--layers <100 or more>] [--scale <0.05 to 1>] [--png <preview.png> [--drawn]]";

    /// <exception cref="ArgumentException">The arguments make no sense; the message says which.</exception>
    public static FigureOptions Parse(string[] arguments)
    {
        string? path = null, png = null;
        var isDrawn = false;
        int? layers = null;
        var scale = 1f;
        for (var i = 0; i < arguments.Length; i++)
        {
            switch (arguments[i])
            {
                case "--layers": layers = (int)ReadNumber(arguments, ref i, Keeper.FewestLayers, 8000); break;
                case "--scale": scale = ReadNumber(arguments, ref i, 0.05f, 1); break;
                case "--png": png = ReadValue(arguments, ref i); break;
                case "--drawn": isDrawn = true; break;
                case var text when path is null && !text.StartsWith('-'): path = text; break;
                case var text: throw new ArgumentException($"'{text}' is not understood.");
            }
        }

        return new FigureOptions(path ?? throw new ArgumentException("The file to write is missing."), layers, scale, png, isDrawn);
    }

    private static string ReadValue(string[] arguments, ref int index) =>
        ++index < arguments.Length ? arguments[index] : throw new ArgumentException($"'{arguments[index - 1]}' needs a value.");

    private static float ReadNumber(string[] arguments, ref int index, float low, float high)
    {
        var name = arguments[index];
        return float.TryParse(ReadValue(arguments, ref index), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high
            ? number
            : throw new ArgumentException(FormattableString.Invariant($"'{name}' needs a number from {low} to {high}."));
    }
}
