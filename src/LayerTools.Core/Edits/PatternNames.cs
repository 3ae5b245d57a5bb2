using System.Diagnostics;
using System.Text.RegularExpressions;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Names by a regular expression.</summary>
internal sealed class PatternNames : NameSource
{
    /// <summary>The time that the names of one file may take together; patterns that need longer would need hours.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private readonly Regex pattern;
    private readonly string replacement;

    public PatternNames(string pattern, string replacement, bool caseSensitive)
    {
        this.replacement = replacement;
        try
        {
            this.pattern = new Regex(pattern, RegexOptions.CultureInvariant | (caseSensitive ? RegexOptions.None : RegexOptions.IgnoreCase), Patience);
        }
        catch (ArgumentException error)
        {
            throw new LayeredFileException(LayeredFileErrorKind.EditRefused, null, "pattern", -1,
                $"'{pattern}' is not a regular expression: {error.Message}", "Put a \\ before characters that are meant as they stand.", error);
        }
    }

    public override IReadOnlyList<(Layer Layer, string Name)> Propose(LayerFile file, IReadOnlyList<Layer> layers, int firstNumber, List<string> warnings)
    {
        var proposals = new List<(Layer, string)>();
        var watch = Stopwatch.StartNew();
        foreach (var layer in layers)
        {
            try
            {
                if (pattern.IsMatch(layer.Name)) proposals.Add((layer, pattern.Replace(layer.Name, replacement)));
            }
            catch (RegexMatchTimeoutException error)
            {
                throw TooSlow(file, layer, error);
            }

            if (watch.Elapsed > Patience) throw TooSlow(file, layer, null);
        }

        return proposals;
    }

    private LayeredFileException TooSlow(LayerFile file, Layer layer, Exception? error) => new(
        LayeredFileErrorKind.EditRefused, file.Path, "layers", -1,
        FormattableString.Invariant($"The pattern '{pattern}' took longer than {Patience.TotalSeconds} seconds, last at '{layer.LayerPath}', and nothing has changed."),
        "Make it simpler; repetitions inside repetitions, such as (a+)+, are slow.", error);
}
