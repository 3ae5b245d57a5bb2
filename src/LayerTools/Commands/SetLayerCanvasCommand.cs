using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Changes a file's canvas and moves all that is on it by whole pixels, without loss.</summary>
[Cmdlet(VerbsCommon.Set, "LayerCanvas", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low, DefaultParameterSetName = ShiftSet)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class SetLayerCanvasCommand : LayerInputCommand
{
    private const string ShiftSet = "Shift";
    private const string CenterSet = "CenterOn";

    private EditRunner? runner;

    /// <summary>Canvas columns, px.</summary>
    [Parameter]
    [ValidateRange(1, 300_000)]
    public int? Width { get; set; }

    /// <summary>Canvas rows, px.</summary>
    [Parameter]
    [ValidateRange(1, 300_000)]
    public int? Height { get; set; }

    /// <summary>How far everything moves, px: to the right, down.</summary>
    [Parameter(ParameterSetName = ShiftSet)]
    [ValidateCount(2, 2)]
    public double[]? Shift { get; set; }

    /// <summary>The x, px, a multiple of 0.5, of the line that becomes the centre line.</summary>
    [Parameter(Mandatory = true, ParameterSetName = CenterSet)]
    public double? CenterOn { get; set; }

    private EditRunner Runner => runner ??= new EditRunner(this, "Change the canvas");

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        if (Width is null && Height is null && Shift is null && CenterOn is null)
        {
            ThrowTerminatingError(ErrorRecords.BadArgument("NothingToSet", "Say what to change: -Width, -Height, -Shift or -CenterOn."));
        }

        // As whole numbers alone the shell would round 1.5 in silence.
        if (Shift is not null && Array.Exists(Shift, pixels => pixels != Math.Floor(pixels) || Math.Abs(pixels) > int.MaxValue))
        {
            ThrowTerminatingError(ErrorRecords.BadArgument("ShiftNotWhole", "-Shift takes two whole numbers of pixels, to the right and down. Nothing is resampled, so there are no parts of a pixel."));
        }
    }

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        Run(file, []);
        WriteObject(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers) => Runner.RunAll(layers, Run);

    private IReadOnlyList<Layer>? Run(LayerFile file, IReadOnlyList<Layer> layers) => Runner.Run(
        new CanvasEdit { Width = Width, Height = Height, Shift = Shift is null ? null : ((int)Shift[0], (int)Shift[1]), CenterOn = CenterOn }, file, layers);
}
