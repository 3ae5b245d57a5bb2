using System.Collections;
using System.Management.Automation;
using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>A cmdlet that reads layered files by path.</summary>
public abstract class LayerFilePathCommand : LayerToolsCommand
{
    private ThrottledProgress? progress;
    private ReadLimits limits = ReadLimits.Default;
    private int count;

    private protected LayerFilePathCommand()
    {
    }

    /// <summary>Paths of layered files; wildcards are allowed.</summary>
    [Parameter(Mandatory = true, Position = 0, ValueFromPipeline = true, ParameterSetName = ParameterSets.Path)]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    public string[] Path { get; set; } = [];

    /// <summary>Paths of layered files, each character meant as it stands.</summary>
    [Parameter(Mandatory = true, ValueFromPipelineByPropertyName = true, ParameterSetName = ParameterSets.LiteralPath)]
    [Alias("PSPath", "LP")]
    [ValidateNotNullOrEmpty]
    public string[] LiteralPath { get; set; } = [];

    /// <summary>Limits to raise for large files: Layers, GroupDepth, PathMegabytes, MemoryMegabytes.</summary>
    [Parameter]
    [ValidateNotNull]
    public Hashtable? Limit { get; set; }

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        progress = new ThrottledProgress(this, "Reading layered files");
        try
        {
            if (Limit is not null) limits = ReadLimitsTable.Parse(Limit);
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
        }
    }

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        if (ParameterSetName == ParameterSets.LiteralPath)
        {
            foreach (var path in LiteralPath) Try(path, () => ReadOne(PathResolver.ResolveLiteral(this, path)));
        }
        else
        {
            foreach (var path in Path)
            {
                IReadOnlyList<string> files = [];
                Try(path, () => files = PathResolver.Resolve(this, path));
                foreach (var file in files) Try(file, () => ReadOne(file));
            }
        }
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        ThrowIfStopping();
        progress?.Complete();
    }

    /// <summary>Passes a file on that was read.</summary>
    private protected abstract void Process(LayerFile file);

    private void ReadOne(string path)
    {
        progress!.Report(FormattableString.Invariant($"{++count}: {System.IO.Path.GetFileName(path)}"));
        var file = LayerFiles.Read(path, limits);
        WriteWarnings(file.Name, file.Warnings);
        Process(file);
    }
}
