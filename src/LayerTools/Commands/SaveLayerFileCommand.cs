using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Writes files with their pending edits: the only cmdlet that does.</summary>
[Cmdlet(VerbsData.Save, "LayerFile", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Medium, DefaultParameterSetName = DestinationSet)]
[OutputType(typeof(FileInfo))]
public sealed class SaveLayerFileCommand : LayerInputCommand
{
    private const string DestinationSet = "Destination";
    private const string InPlaceSet = "InPlace";

    private readonly SavePlaces places = new();
    private ThrottledProgress? progress;
    private int count;

    /// <summary>The file to write, or the folder to write files to under their own names.</summary>
    [Parameter(Mandatory = true, Position = 0, ParameterSetName = DestinationSet)]
    [ValidateNotNullOrEmpty]
    public string Destination { get; set; } = string.Empty;

    /// <summary>Replaces the files that were read.</summary>
    [Parameter(Mandatory = true, ParameterSetName = InPlaceSet)]
    public SwitchParameter InPlace { get; set; }

    /// <summary>Overwrites files that exist at the destination.</summary>
    [Parameter(ParameterSetName = DestinationSet)]
    public SwitchParameter Force { get; set; }

    /// <summary>Where a copy of each file goes before it is replaced; made if missing.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string? BackupFolder { get; set; }

    /// <inheritdoc/>
    protected override void BeginProcessing() => progress = new ThrottledProgress(this, "Saving layered files");

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        base.EndProcessing();
        progress?.Complete();
    }

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Save(file, piped: null);

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Save(file, ofFile.Count));
    }

    /// <param name="file">The file to write.</param>
    /// <param name="piped">How many layers stood for the file; null if it came itself.</param>
    private void Save(LayerFile file, int? piped)
    {
        progress!.Report(FormattableString.Invariant($"{++count}: {file.Name}"));
        var destination = InPlace ? file.Path : SavePlaces.Locate(PathResolver.ResolveLiteral(this, Destination), file);
        places.Claim(destination, file);
        var options = new SaveOptions
        {
            InPlace = InPlace,
            Force = Force,
            BackupFolder = BackupFolder is null ? null : PathResolver.ResolveLiteral(this, BackupFolder),
        };
        if (!ShouldProcess(destination, (InPlace ? "Replace the original" : $"Write a copy of {file.Path}") + DescribeEdits(file))) return;
        if (!InPlace) SavePlaces.MakeFolder(destination);
        var result = LayerFiles.Save(file, destination, options);
        WriteWarnings(file.Name, result.Warnings);
        Tell(result, piped);
        WriteFile(result.Path);
    }

    /// <summary>Nothing for none: behind edits with -WhatIf none are pending, and "0" would say that nothing would be written.</summary>
    private static string DescribeEdits(LayerFile file) => file.PendingCount == 0 ? string.Empty : $" with {Views.Count(file.PendingCount, "pending edit")}";

    private void Tell(SaveResult result, int? piped)
    {
        var layers = Views.Count(result.LayerCount, "layer");
        if (!result.Written) WriteVerbose($"{result.Path}: Nothing was pending; the file was left as it is.");
        else if (piped is not { } count) WriteVerbose($"{result.Path}: wrote {layers}");
        else
        {
            // Said aloud, since somebody who piped a few layers may not expect a whole file.
            var message = FormattableString.Invariant($"{result.Path}: wrote {layers} ({count} {(count == 1 ? "was" : "were")} piped)");
            WriteInformation(new HostInformationMessage { Message = message }, ["PSHOST", "LayerTools"]);
        }
    }
}
