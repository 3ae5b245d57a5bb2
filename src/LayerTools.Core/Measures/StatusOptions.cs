using System.Text.RegularExpressions;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Measures;

/// <summary>
/// What counts as finished, and which layers are no parts. The defaults are common practice: finished parts are ticked off with a green mark, and
/// layers that are no parts are called so by their whole name or its last word (less a side token), in English or Japanese.
/// </summary>
public sealed record StatusOptions
{
    /// <summary>The marks that mean finished.</summary>
    public ISet<Mark> DoneMarks { get; init; } = new HashSet<Mark> { Mark.Green };

    /// <summary>Names that mean finished, for files whose marks were lost; null for none.</summary>
    public Regex? DoneName { get; init; }

    /// <summary>Names of backdrops, and of groups of them.</summary>
    public Regex BackdropName { get; init; } = CreateDefault("background|backdrop|bg|背景|用紙");

    /// <summary>Names of sketches, and of groups of them.</summary>
    public Regex SketchName { get; init; } = CreateDefault("sketch|sketches|rough|roughs|draft|drafts|下描き|下書き|下絵|ラフ|ラフ画|スケッチ");

    /// <summary>Names of guides and of pictures to work by, and of groups of them.</summary>
    public Regex GuideName { get; init; } = CreateDefault("guide|guides|guideline|guidelines|reference|references|ガイド|ガイド線|参考|参考画像|資料");

    /// <summary>A pattern for these options: culture-invariant, case ignored, and with a timeout so that no pattern can hang.</summary>
    /// <exception cref="LayeredFileException">The pattern is no regular expression.</exception>
    public static Regex CreatePattern(string pattern)
    {
        try
        {
            return new Regex(pattern, RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, TimeSpan.FromSeconds(2));
        }
        catch (ArgumentException error)
        {
            throw new LayeredFileException(LayeredFileErrorKind.EditRefused, null, "pattern", -1,
                $"'{pattern}' is not a regular expression: {error.Message}", "Put a \\ before characters that are meant as they stand.", error);
        }
    }

    /// <summary>What a layer is for, as its own name says, whatever the groups around it are called.</summary>
    internal LayerRole TellRole(Layer layer)
    {
        if (BackdropName.IsMatch(layer.BaseName)) return LayerRole.Backdrop;
        if (SketchName.IsMatch(layer.BaseName)) return LayerRole.Sketch;
        return GuideName.IsMatch(layer.BaseName) ? LayerRole.Guide : LayerRole.Part;
    }

    /// <summary>What a layer is for, as its name or that of the innermost group around it which says something tells.</summary>
    internal LayerRole FindRole(Layer layer)
    {
        for (var named = layer; named is not null; named = named.GetParent())
        {
            if (TellRole(named) is var role and not LayerRole.Part) return role;
        }

        return LayerRole.Part;
    }

    /// <summary>Words that stand alone or at the end, perhaps with "colour", a number or a word for a copy behind them.</summary>
    private static Regex CreateDefault(string words) => CreatePattern($@"(?:^|\P{{L}})(?:{words})(?:\P{{L}}*(?:colou?r|layer|copy|色|コピー|のコピー))?\P{{L}}*$");
}
