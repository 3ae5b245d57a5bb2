using System.Globalization;
using System.Text;
using LayerTools.Checks;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Sheets.Reports;

/// <summary>What a report says in words.</summary>
internal static class ReportWords
{
    public const string Nothing = "\u2013";

    private const string Between = " \u00B7 ";

    /// <summary>A number of things, such as "1 part" or "2 parts".</summary>
    public static string Count(int count, string thing) => FormattableString.Invariant($"{count} {thing}{(count == 1 ? string.Empty : "s")}");

    public static string Size(long width, long height) => FormattableString.Invariant($"{width}\u00A0\u00D7\u00A0{height}\u00A0px");

    /// <summary>A number with so many digits behind the point; a dash for none.</summary>
    public static string Number(double? value, int digits = 0)
    {
        if (value is not { } number) return Nothing;
        // Adding 0 takes the sign from a zero.
        var text = (Math.Round(number, digits) + 0.0).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Replace('-', '\u2212');
    }

    public static string Percent(double? value, int digits = 0) => value is null ? Nothing : $"{Number(value, digits)}\u00A0%";

    public static string Of(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    public static string Of(ColorMode mode) => mode switch
    {
        ColorMode.Rgb => "RGB",
        ColorMode.Cmyk => "CMYK",
        ColorMode.Lab => "L*a*b*",
        _ => Split(mode.ToString()),
    };

    /// <summary>Canvas, colours, layers, and edits that are not saved.</summary>
    public static string Facts(LayerFile file)
    {
        var facts = new List<string>
        {
            Size(file.Width, file.Height),
            FormattableString.Invariant($"{Of(file.ColorMode)}, {file.BitDepth} bit"),
            Count(file.LayerCount, "layer"),
        };
        if (file.PendingCount > 0) facts.Add($"{Count(file.PendingCount, "edit")} not saved");
        return string.Join(Between, facts);
    }

    /// <summary>Finished of all parts that are known to be finished or open.</summary>
    public static string Done(StatusSummary? sum) => sum?.Done is { } done && sum.PercentByCount is { } percent
        ? FormattableString.Invariant($"{done} of {done + sum.Open} ({percent:0.#}\u00A0%)")
        : "not known";

    /// <summary>Size, and whatever about the layer is not plain.</summary>
    public static string Look(Layer layer)
    {
        var words = new List<string>();
        if (layer.Kind == LayerKind.Group) words.Add(Count(layer.GetChildren().Count, "layer"));
        else words.Add(layer.ContentBounds.IsEmpty ? "no pixels" : Size(layer.Width, layer.Height));
        if (layer.Kind is not (LayerKind.Pixel or LayerKind.Group)) words.Add(Split(layer.Kind.ToString()));
        if (layer.BlendMode is not (BlendMode.Normal or BlendMode.PassThrough)) words.Add(Split(layer.BlendMode.ToString()));
        if (layer.OpacityByte < byte.MaxValue) words.Add(FormattableString.Invariant($"opacity {layer.Opacity:0.#}\u00A0%"));
        if (layer.Clipped) words.Add("clipped");
        if (layer.HasMask) words.Add("masked");
        if (layer.Locked) words.Add("locked");
        return string.Join(Between, words);
    }

    /// <summary>The mark, whether the layer is seen, and whether its opposite is missing; empty where there is nothing to say.</summary>
    public static string Remarks(Layer layer, LayerStatus? status)
    {
        var words = new List<string>();
        if (layer.Mark != Mark.None) words.Add($"{Split(layer.Mark.ToString())} mark");
        if (!layer.Visible) words.Add("hidden");
        else if (!layer.EffectivelyVisible) words.Add("in a hidden group");
        if (status?.MissingOpposite == true) words.Add($"no {(status.Side == Side.Left ? "right" : "left")} part");
        return string.Join(Between, words);
    }

    /// <summary>How far a layer is.</summary>
    public static (ReportSign? Sign, string Word) State(LayerStatus status) => status switch
    {
        { IsPart: true, Done: true } => (ReportSign.Done, "done"),
        { IsPart: true, Done: false } => (ReportSign.Open, "open"),
        { IsPart: true } => (ReportSign.Unknown, "not known"),
        { Role: not LayerRole.Part } => (null, Split(status.Role.ToString())),
        _ => (null, "no part"),
    };

    /// <summary>The words of a name in code: ColorDodge is "color dodge".</summary>
    public static string Split(string name)
    {
        var words = new StringBuilder(name.Length + 4);
        for (var i = 0; i < name.Length; i++)
        {
            if (i > 0 && char.IsUpper(name[i]) && !char.IsUpper(name[i - 1])) words.Append(' ');
            words.Append(char.ToLowerInvariant(name[i]));
        }

        return words.ToString();
    }
}
