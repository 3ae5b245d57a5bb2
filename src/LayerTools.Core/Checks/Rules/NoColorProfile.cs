using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A file that does not say what its colours are.</summary>
internal sealed class NoColorProfile : CheckRule
{
    public override string Id => nameof(NoColorProfile);

    public override string Title => "There is no colour profile";

    public override string Reason => "Without a profile each program shows the colours as it likes; most take them as sRGB. Asked of RGB files.";

    public override Severity DefaultSeverity => Severity.Note;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.File.ColorMode != ColorMode.Rgb || context.File.Detail.ColorProfile is not null) yield break;
        yield return Find(context, "The file does not say which colours its numbers mean.", "Assign the sRGB profile in the painting program, if the figure was painted in sRGB.", "no profile", "sRGB");
    }
}
