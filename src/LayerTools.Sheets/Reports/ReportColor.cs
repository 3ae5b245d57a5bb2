using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Reports;

/// <summary>A colour of the page, on light and on dark.</summary>
/// <param name="Name">What the style calls it.</param>
/// <param name="Light">On light.</param>
/// <param name="Dark">On dark.</param>
internal sealed record ReportColor(string Name, Rgb Light, Rgb Dark)
{
    /// <summary>What lies behind words.</summary>
    public static IReadOnlyList<ReportColor> Papers { get; } =
    [
        Create("paper", 0xfbfaf7, 0x1c1b1a),
        Create("raised", 0xf0ede7, 0x2a2826),
    ];

    /// <summary>What words and shapes are written in; each may stand on each paper.</summary>
    public static IReadOnlyList<ReportColor> Inks { get; } =
    [
        Create("ink", 0x23211f, 0xecebe8),
        Create("quiet", 0x5a5752, 0xb3afa8),
        Create("link", 0x1b5688, 0x9cc4e8),
        Create("error", 0x9f2118, 0xff9f94),
        Create("warning", 0x744700, 0xe9b866),
        Create("done", 0x1a6437, 0x88d0a1),
    ];

    /// <summary>Lines and the boards behind pictures: they carry no words.</summary>
    public static IReadOnlyList<ReportColor> Others { get; } =
    [
        Create("line", 0xd2cdc4, 0x484440),
        Create("board", 0xb9b7b3, 0x8d8b88),
        Create("other-board", 0xa9a7a3, 0x7d7b78),
    ];

    /// <summary>The colours as declarations of a style sheet: light ones everywhere, dark ones on screens of those who want them.</summary>
    public static string Declare()
    {
        var all = Papers.Concat(Inks).Concat(Others).ToList();
        return $":root{{color-scheme:light;{string.Concat(all.Select(color => $"--{color.Name}:{color.Light};"))}}}\n" +
            $"@media screen and (prefers-color-scheme:dark){{:root{{color-scheme:dark;{string.Concat(all.Select(color => $"--{color.Name}:{color.Dark};"))}}}}}\n";
    }

    private static ReportColor Create(string name, int light, int dark) => new(name, Rgb.FromNumber(light), Rgb.FromNumber(dark));
}
