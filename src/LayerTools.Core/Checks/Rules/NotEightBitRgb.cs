using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A file of other colours or depth than rigs take.</summary>
internal sealed class NotEightBitRgb : CheckRule
{
    public override string Id => nameof(NotEightBitRgb);

    public override string Title => "The file is not in RGB with 8 bits";

    public override string Reason => "Programs that move figures take RGB with 8 bits a channel and nothing else (common practice).";

    public override Severity DefaultSeverity => Severity.Error;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var file = context.File;
        if (file is { ColorMode: ColorMode.Rgb, BitDepth: 8 }) yield break;
        yield return Find(context, "The file has other colours or another depth than a rig can take. The command also bakes masks, clipping and effects.", Remedy.Edit(file, "ConvertTo-RigFile"),
            FormattableString.Invariant($"{Words(file.ColorMode)}, {file.BitDepth} bit"), "RGB, 8 bit");
    }

    private static string Words(ColorMode mode) => mode is ColorMode.Rgb or ColorMode.Cmyk ? mode.ToString().ToUpperInvariant() : mode.ToString();
}
