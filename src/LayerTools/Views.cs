using System.Globalization;
using LayerTools.Checks;
using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Text;

namespace LayerTools;

/// <summary>The words and figures that default views show, so that they can be tested without a shell.</summary>
public static class Views
{
    private const char VisibleSpace = '\u2423';

    /// <summary>A layer's name, indented by its depth; a group ends in '/'.</summary>
    public static string IndentName(Layer layer) => new string(' ', 2 * layer.Depth) + (layer.Name.Length == 0 ? "(no name)" : OneLine(layer.Name)) + (layer.Kind == LayerKind.Group ? "/" : string.Empty);

    /// <summary>"5000 x 6000": columns and rows, px.</summary>
    public static string DescribeSize(int width, int height) => FormattableString.Invariant($"{width} x {height}");

    /// <summary>"1200 x 900 at 40, 310": size and corner, canvas px; empty for a layer without pixels.</summary>
    public static string DescribeBounds(Layer layer) =>
        layer.Width == 0 || layer.Height == 0 ? "empty" : FormattableString.Invariant($"{layer.Width} x {layer.Height} at {layer.Left}, {layer.Top}");

    /// <summary>"600", or "-" where the file does not say.</summary>
    public static string DescribePpi(LayerFile file) => file.Ppi is { } ppi ? ppi.ToString("0.##", CultureInfo.InvariantCulture) : "-";

    /// <summary>"RGB, 8 bit".</summary>
    public static string DescribeMode(LayerFile file) => FormattableString.Invariant($"{Describe(file.ColorMode)}, {file.BitDepth} bit");

    /// <summary>"PSD" or "PSB".</summary>
    public static string Describe(FileFormat format) => format.ToString().ToUpperInvariant();

    /// <summary>"1 layer", "12 layers".</summary>
    public static string Count(int number, string noun) => FormattableString.Invariant($"{number} {noun}{(number == 1 ? string.Empty : "s")}");

    /// <summary>The colour mode in words.</summary>
    public static string Describe(ColorMode mode) => mode switch
    {
        ColorMode.Rgb => "RGB",
        ColorMode.Cmyk => "CMYK",
        _ => mode.ToString(),
    };

    /// <summary>What a layer is made of, in lower case.</summary>
    public static string Describe(LayerKind kind) => kind.ToString().ToLowerInvariant();

    /// <summary>The side in lower case; empty for a central part.</summary>
    public static string DescribeSide(Side side) => side == Side.None ? string.Empty : side.ToString().ToLowerInvariant();

    /// <summary>"multiply", "pass through": the blend mode in the words of the W3C, where it has them.</summary>
    public static string Describe(BlendMode mode)
    {
        var text = mode.ToString();
        return string.Concat(text.Select((letter, index) => char.IsUpper(letter) && index > 0 ? " " + char.ToLowerInvariant(letter) : char.ToLowerInvariant(letter).ToString()));
    }

    /// <summary>The mark in words, "no mark" where there is none; a number that has no name as "mark 9".</summary>
    public static string DescribeMark(Layer layer) => layer.Mark == Mark.None ? "no mark" : Describe(layer.Mark);

    /// <summary>The mark in lower case; empty where there is none; a number that has no name as "mark 9".</summary>
    public static string Describe(Mark mark)
    {
        var text = mark.ToString();
        return mark == Mark.None ? string.Empty : char.IsLetter(text[0]) ? text.ToLowerInvariant() : "mark " + text;
    }

    /// <summary>"yes", "hidden", or "in hidden group".</summary>
    public static string DescribeVisibility(Layer layer) => (layer.Visible, layer.EffectivelyVisible) switch
    {
        (false, _) => "hidden",
        (true, false) => "in hidden group",
        _ => "yes",
    };

    /// <summary>"80 %": to whole per cent, as files keep steps of 1/255.</summary>
    public static string DescribeOpacity(Layer layer) => layer.Opacity.ToString("0", CultureInfo.InvariantCulture) + " %";

    /// <summary>What is unusual about a layer, in words: hidden, clipped, mask, locked, opacity, blend mode.</summary>
    public static string DescribeState(Layer layer)
    {
        var usual = layer.Kind == LayerKind.Group ? BlendMode.PassThrough : BlendMode.Normal;
        var words = new List<string>();
        if (!layer.EffectivelyVisible) words.Add(DescribeVisibility(layer));
        if (layer.Clipped) words.Add("clipped");
        if (layer.HasMask) words.Add("mask");
        if (layer.Locked) words.Add("locked");
        if (layer.Opacity < 100) words.Add(DescribeOpacity(layer));
        if (layer.BlendMode != usual) words.Add(layer is { Kind: LayerKind.Group, BlendMode: BlendMode.Normal } ? "isolated" : Describe(layer.BlendMode));
        return string.Join(", ", words);
    }

    /// <summary>"done", "open", "not known" for a part of a file without marks; else why the layer does not count.</summary>
    public static string DescribeProgress(LayerStatus status) => (status.IsPart, status.Done) switch
    {
        (true, true) => "done",
        (true, false) => "open",
        (true, null) => "not known",
        _ => status.Role == LayerRole.Part ? "no pixels" : status.Role.ToString().ToLowerInvariant(),
    };

    /// <summary>A status with its ledger: "recheck", "missing"; what else is said without one.</summary>
    public static string DescribeState(LedgerStatus status) => status.State is { } state && (status.IsPart || state is PartState.Missing or PartState.Recheck) ? Describe(state)
        : status.Candidates.Length > 0 ? "several" : DescribeProgress(status);

    /// <summary>How far a part is, in lower case.</summary>
    public static string Describe(PartState state) => state.ToString().ToLowerInvariant();

    /// <summary>By what a part was found in a ledger, in lower case, or what it could be; empty for nothing.</summary>
    public static string DescribeMatch(LedgerStatus status) => status.MatchedBy switch
    {
        LedgerEvidence.None => string.Empty,
        LedgerEvidence.Ambiguous => OneLine($"perhaps {status.Candidates}"),
        var evidence => evidence.ToString().ToLowerInvariant(),
    };

    /// <summary>"2026-03-01 09:30"; empty where the time is not known.</summary>
    public static string DescribeTime(DateTime? time) => time?.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) ?? string.Empty;

    /// <summary>"by anna, 2026-03-01 09:30 UTC".</summary>
    public static string DescribeAuthor(string who, DateTime? when) =>
        $"by {(who.Length == 0 ? "nobody named" : who)}{(when is null ? string.Empty : $", {DescribeTime(when)} UTC")}";

    /// <summary>"62.5 %"; "-" where there is nothing to be a part of.</summary>
    public static string DescribePercent(double? percent) => percent is { } value ? value.ToString("0.0", CultureInfo.InvariantCulture) + " %" : "-";

    /// <summary>How bad a finding is, in lower case.</summary>
    public static string Describe(Severity severity) => severity.ToString().ToLowerInvariant();

    /// <summary>A text on one line, then broken into lines between words; words longer than a line are cut. Tables of the shell cut words anywhere.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Columns of a line, at least 2.</param>
    public static string Wrap(string? text, int width) => string.Join("\n", WordWrap.Break(OneLine(text), width));

    /// <summary>A number as it is; "-" where it is not known.</summary>
    public static string DescribeCount(int? count) => count?.ToString(CultureInfo.InvariantCulture) ?? "-";

    /// <summary>"12.5": a figure with so many digits after the point; "-" where it is not known.</summary>
    public static string DescribeFigure(double? figure, int digits) =>
        figure is { } value ? value.ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : "-";

    /// <summary>"+2.7", "-0.5", "0.0": a distance or an angle that has a direction; "-" where it is not known.</summary>
    public static string DescribeOffset(double? offset) => offset is { } value ? value.ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture) : "-";

    /// <summary>What was compared: a path, or the whole figure in words.</summary>
    public static string DescribeSubject(string? layerPath) => string.IsNullOrEmpty(layerPath) ? "(whole figure)" : OneLine(layerPath);

    /// <summary>An area with thin groups of digits: "1 204 500".</summary>
    public static string DescribeArea(long area) => area.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', ' ');

    /// <summary>"3.2": a depth to a tenth px; "64+" where it was not measured farther; "-" where there is none.</summary>
    public static string DescribeDepth(double? depth, int maximum) => depth switch
    {
        null => "-",
        { } value when value >= maximum => FormattableString.Invariant($"{maximum}+"),
        { } value => value.ToString("0.#", CultureInfo.InvariantCulture),
    };

    /// <summary>A summary's key; a file's is cut down to its folder and its name, since many folders hold a file of one name.</summary>
    public static string DescribeKey(StatusSummary summary)
    {
        if (!System.IO.Path.IsPathRooted(summary.Key)) return OneLine(summary.Key);
        var folder = System.IO.Path.GetFileName(System.IO.Path.GetDirectoryName(summary.Key));
        return OneLine(string.IsNullOrEmpty(folder) ? summary.Key : $"{folder}/{System.IO.Path.GetFileName(summary.Key)}");
    }

    /// <summary>A summary's note in a few words: "no marks", "no parts"; empty if the figures tell all.</summary>
    public static string DescribeNote(StatusSummary summary)
    {
        var notes = new List<string>();
        if (summary is { Parts: 0, Missing: null or 0 }) return "no parts";
        if (summary.Unknown > 0) notes.Add(summary.Recheck is not null ? FormattableString.Invariant($"{summary.Unknown} not known") : summary.Unknown == summary.Parts ? "no marks" : FormattableString.Invariant($"{summary.Unknown} without marks"));
        if (summary.Recheck > 0) notes.Add(FormattableString.Invariant($"{summary.Recheck} to recheck"));
        if (summary.Missing > 0) notes.Add(FormattableString.Invariant($"{summary.Missing} missing"));
        return string.Join(", ", notes);
    }

    /// <summary>The canvas that a profile wants; "any" for what it leaves open.</summary>
    public static string DescribeCanvas(LayerProfile profile) => $"{DescribeWanted(profile.Canvas.Width)} x {DescribeWanted(profile.Canvas.Height)}";

    /// <summary>The resolution that a profile wants.</summary>
    public static string DescribeWantedPpi(LayerProfile profile) => DescribeWanted(profile.Canvas.Ppi);

    /// <summary>A name for a left part as a profile writes it.</summary>
    public static string DescribeNames(LayerProfile profile)
    {
        var parts = profile.Naming.Vocabulary.Parts;
        var part = parts.FirstOrDefault(part => part.Key == "upper-arm") ?? (parts.Count > 0 ? parts[0] : null);
        return part is null ? string.Empty : OneLine(new NameWriter(profile.Naming).Write(new ParsedName { Text = string.Empty, Part = part, Side = Side.Left }, profile.Naming.FirstNumber));
    }

    /// <summary>Whose left a profile means.</summary>
    public static string DescribeSideOwner(LayerProfile profile) => profile.Naming.Sides.Owner == SideOwner.Character ? "figure's" : "viewer's";

    private static string DescribeWanted(double? value) => value?.ToString("0.##", CultureInfo.InvariantCulture) ?? "any";

    /// <summary>A name on one line: control characters become visible signs, and so do spaces at the ends, which nobody would see.</summary>
    public static string OneLine(string? name)
    {
        var text = PrintableText.Of(name);
        var withoutStart = text.TrimStart(' ');
        var inner = withoutStart.TrimEnd(' ');
        return new string(VisibleSpace, text.Length - withoutStart.Length) + inner + new string(VisibleSpace, withoutStart.Length - inner.Length);
    }
}
