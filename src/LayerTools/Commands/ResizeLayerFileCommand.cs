using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Makes a figure larger or smaller with its canvas: parts, masks, paths, guides and the sizes of effects.</summary>
[Cmdlet(VerbsCommon.Resize, "LayerFile", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low, DefaultParameterSetName = PercentSet)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class ResizeLayerFileCommand : LayerInputCommand, IDisposable
{
    private const string PercentSet = "Percent";
    private const string WidthSet = "Width";
    private const string HeightSet = "Height";

    private readonly CancellationTokenSource stopping = new();
    private EditRunner? runner;

    /// <summary>How large the result is, 1 to 400 % of what there is.</summary>
    [Parameter(Mandatory = true, Position = 0, ParameterSetName = PercentSet)]
    [ValidateRange(1.0, 400.0)]
    public double Percent { get; set; }

    /// <summary>Columns of the new canvas, px, an even number; the height follows.</summary>
    [Parameter(Mandatory = true, ParameterSetName = WidthSet)]
    [ValidateRange(2, 300_000)]
    public int Width { get; set; }

    /// <summary>Rows of the new canvas, px, an even number; the width follows.</summary>
    [Parameter(Mandatory = true, ParameterSetName = HeightSet)]
    [ValidateRange(2, 300_000)]
    public int Height { get; set; }

    /// <summary>How new pixels are made; the area average where the figure becomes smaller, else the cubic of Catmull and Rom.</summary>
    [Parameter]
    public ResampleFilter? Filter { get; set; }

    /// <summary>Scales the resolution too, so that a print keeps its size; otherwise the resolution stays.</summary>
    [Parameter]
    public SwitchParameter ScalePpi { get; set; }

    private EditRunner Runner => runner ??= new EditRunner(this, "Resize the figure");

    /// <summary>Frees what stops the work; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        Run(file, []);
        WriteObject(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers) => Runner.RunAll(layers, Run);

    private IReadOnlyList<Layer>? Run(LayerFile file, IReadOnlyList<Layer> layers)
    {
        try
        {
            return Runner.Run(CreateEdit(), file, layers);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }

    private ResizeEdit CreateEdit() => new()
    {
        Percent = ParameterSetName == PercentSet ? Percent : null,
        Width = ParameterSetName == WidthSet ? Width : null,
        Height = ParameterSetName == HeightSet ? Height : null,
        Filter = Filter,
        ScalesPpi = ScalePpi,
        Cancellation = stopping.Token,
    };
}
