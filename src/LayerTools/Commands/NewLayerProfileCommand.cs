using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Profiles.Learning;

namespace LayerTools.Commands;

/// <summary>Writes a profile: what approved files show, or a copy of another profile to begin with.</summary>
[Cmdlet(VerbsCommon.New, "LayerProfile", SupportsShouldProcess = true)]
[OutputType(typeof(LayerProfile))]
public sealed class NewLayerProfileCommand : LayerToolsCommand
{
    private ProfileLearner? learner;
    private string? firstFile;
    private bool hasFailed;

    /// <summary>Files that are as they should be: paths, wildcards allowed, or files from Get-LayerFile.</summary>
    [Parameter(Position = 0, ValueFromPipeline = true)]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    public object[]? FromFile { get; set; }

    /// <summary>The file to write, *.layerprofile.json, or the folder to write it to.</summary>
    [Parameter(Position = 1)]
    [ValidateNotNullOrEmpty]
    public string? Destination { get; set; }

    /// <summary>What the profile is called.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string? Name { get; set; }

    /// <summary>What holds for all that the files do not show: a profile, the name of a shipped one, or the path of its file.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>Overwrites the file if it exists.</summary>
    [Parameter]
    public SwitchParameter Force { get; set; }

    private LayerProfile Basis => Profile ?? LayerProfiles.Default;

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        foreach (var value in FromFile ?? []) Attempt(value, () => Look(value));
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        ThrowIfStopping();
        // A profile that knows only some of the files would pass for one that knows all.
        if (hasFailed) return;
        if (learner is null && MyInvocation.BoundParameters.ContainsKey(nameof(FromFile)))
        {
            WriteError(ErrorRecords.BadArgument("NothingToLearnFrom", "No file matches -FromFile. Check the path."));
            return;
        }

        Try(Destination, Write);
    }

    private void Look(object value)
    {
        switch (PSObject.AsPSObject(value).BaseObject)
        {
            case LayerFile file:
                Add(file);
                break;
            case FileInfo file:
                Add(LayerFiles.Read(file.FullName));
                break;
            case string path:
                foreach (var found in PathResolver.Resolve(this, path)) Attempt(found, () => Add(LayerFiles.Read(found)));
                break;
            case var other:
                throw new RefusedException(ErrorRecords.BadArgument("NotALayerFile", $"'{other}' is no layered file. Give paths, or files from Get-LayerFile.", other));
        }
    }

    private void Add(LayerFile file)
    {
        WriteWarnings(file.Name, file.Warnings);
        learner ??= new ProfileLearner(Basis);
        learner.Add(file);
        firstFile ??= System.IO.Path.GetFileNameWithoutExtension(file.Name);
    }

    private void Attempt(object? target, Action work)
    {
        if (!Try(target, work)) hasFailed = true;
    }

    private void Write()
    {
        var path = Locate();
        var name = Name ?? System.IO.Path.GetFileName(path).Substring(0, System.IO.Path.GetFileName(path).Length - LayerProfiles.Extension.Length);
        var learned = learner?.Learn(name) ?? new LearnedProfile(Basis with { Name = name }, [], []);
        if (!Force && File.Exists(path)) throw new RefusedException(ErrorRecords.DestinationExists(path));
        if (!ShouldProcess(path, learner is null ? $"Write a profile like '{Basis.Name}'" : "Write a profile of what the files show")) return;
        var written = LayerProfiles.Write(learned.Profile, path, Force);
        foreach (var sentence in learned.Learned) WriteVerbose(sentence);
        WriteWarnings(System.IO.Path.GetFileName(path), learned.NotLearned);
        WriteObject(written);
    }

    private string Locate()
    {
        var path = PathResolver.ResolveLiteral(this, Destination ?? ".");
        if (Directory.Exists(path)) path = System.IO.Path.Combine(path, FileNames.MakeSafe(Name ?? firstFile ?? Basis.Name) + LayerProfiles.Extension);
        if (System.IO.Path.GetFileName(path).Length > LayerProfiles.Extension.Length && path.EndsWith(LayerProfiles.Extension, StringComparison.OrdinalIgnoreCase)) return System.IO.Path.GetFullPath(path);
        throw new RefusedException(ErrorRecords.BadArgument("NotAProfileName", $"{path}: A profile's name ends in {LayerProfiles.Extension}. Name it so, or name a folder that there is.", path));
    }
}
