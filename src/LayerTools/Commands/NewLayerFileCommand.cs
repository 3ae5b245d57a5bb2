using System.Globalization;
using System.Management.Automation;
using System.Text.RegularExpressions;
using LayerTools.Binding;
using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Writes a blank starting file. The size, the resolution, mid grey and the centre line at half the width are common practice.</summary>
[Cmdlet(VerbsCommon.New, "LayerFile", SupportsShouldProcess = true)]
[OutputType(typeof(LayerFile))]
public sealed class NewLayerFileCommand : LayerToolsCommand
{
    private const int LargestPsd = 30_000;

    /// <summary>The file to write; each character is meant as it stands.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNullOrEmpty]
    public string Path { get; set; } = string.Empty;

    /// <summary>Canvas columns, px.</summary>
    [Parameter]
    [ValidateRange(1, 300_000)]
    public int Width { get; set; } = 5000;

    /// <summary>Canvas rows, px.</summary>
    [Parameter]
    [ValidateRange(1, 300_000)]
    public int Height { get; set; } = 6000;

    /// <summary>Resolution, pixels per inch.</summary>
    [Parameter]
    [ValidateRange(1.0, 32_767.0)]
    public double Ppi { get; set; } = 600;

    /// <summary>Colour of the backdrop layer, #rrggbb or #rgb.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string Backdrop { get; set; } = "#777777";

    /// <summary>Adds empty groups from head to toe.</summary>
    [Parameter]
    public SwitchParameter Skeleton { get; set; }

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        if (!Regex.IsMatch(Backdrop, "^#?([0-9a-fA-F]{3}|[0-9a-fA-F]{6})$", RegexOptions.CultureInvariant))
        {
            ThrowTerminatingError(ErrorRecords.BadArgument("BadColor", $"'{Backdrop}' is no colour. Give it as #rrggbb or #rgb, such as #777777."));
        }
    }

    /// <inheritdoc/>
    protected override void ProcessRecord() => Try(Path, () =>
    {
        var path = PathResolver.ResolveLiteral(this, Path);
        CheckFormat(path);
        if (File.Exists(path)) throw new RefusedException(ErrorRecords.FileExists(path));
        if (!ShouldProcess(path, FormattableString.Invariant($"Write a blank file of {Width} x {Height} px"))) return;
        if (Width % 2 != 0)
        {
            WriteWarning(FormattableString.Invariant(
                $"{path}: The width of {Width} px is odd, so the centre line at x = {Width / 2.0} runs through the middle of a pixel column. An even width puts it on a pixel edge."));
        }

        var options = new NewFileOptions { Width = Width, Height = Height, Ppi = Ppi, BackdropRgb = ParseColor(Backdrop), Skeleton = Skeleton };
        var result = LayerFiles.Save(LayerFiles.Create(path, options), path, new SaveOptions());
        WriteWarnings(System.IO.Path.GetFileName(path), result.Warnings);
        WriteObject(LayerFiles.Read(path));
    });

    private void CheckFormat(string path)
    {
        if (SavePlaces.FindFormat(path) is not { } format) throw new RefusedException(ErrorRecords.NotALayeredName(path));
        if (format == FileFormat.Psd && Math.Max(Width, Height) > LargestPsd) throw new RefusedException(ErrorRecords.TooLargeForPsd(path, LargestPsd));
    }

    private static int ParseColor(string text)
    {
        var digits = text.TrimStart('#');
        if (digits.Length == 3) digits = string.Concat(digits.Select(digit => new string(digit, 2)));
        return int.Parse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
    }
}
