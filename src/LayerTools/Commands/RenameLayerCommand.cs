using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Renames layers by a pattern, a name, a script block, a list, an older delivery or the form that a profile wants.</summary>
[Cmdlet(VerbsCommon.Rename, "Layer", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low, DefaultParameterSetName = MatchSet)]
[OutputType(typeof(LayerFile), typeof(Layer), typeof(RenamePreview), typeof(NormalizePreview), typeof(RecoveryPreview))]
public sealed class RenameLayerCommand : HoldingEditCommand, IDisposable
{
    private const string MatchSet = "Match";
    private const string NewNameSet = "NewName";
    private const string MapSet = "Map";
    private const string NormalizeSet = "Normalize";
    private const string LikeSet = "Like";

    private IReadOnlyList<RenameEntry> entries = [];
    private NormalizeEdit? normalizing;
    private readonly CancellationTokenSource stopping = new();
    private DeliveryFiles? deliveries;
    private NameRecovery? recovery;
    private RenameOptions options = new();

    /// <summary>A .NET regular expression; only names that match are changed.</summary>
    [Parameter(Mandatory = true, Position = 0, ParameterSetName = MatchSet)]
    [ValidateNotNullOrEmpty]
    public string Match { get; set; } = string.Empty;

    /// <summary>What takes the place of each match, with $1 and the like.</summary>
    [Parameter(Mandatory = true, Position = 1, ParameterSetName = MatchSet)]
    [AllowEmptyString]
    public string Replacement { get; set; } = string.Empty;

    /// <summary>Tells upper from lower case in -Match.</summary>
    [Parameter(ParameterSetName = MatchSet)]
    public SwitchParameter CaseSensitive { get; set; }

    /// <summary>The new name, or a script block that gives it, with the layer as $_.</summary>
    [Parameter(Mandatory = true, ParameterSetName = NewNameSet)]
    [ValidateNotNull]
    public object NewName { get; set; } = string.Empty;

    /// <summary>Old and new names: a hashtable, the path of a CSV file, or rows with Old and New such as a change list.</summary>
    [Parameter(Mandatory = true, ParameterSetName = MapSet)]
    [ValidateNotNullOrEmpty]
    public object[] Map { get; set; } = [];

    /// <summary>Takes the renames of -Map back, last one first.</summary>
    [Parameter(ParameterSetName = MapSet)]
    public SwitchParameter Reverse { get; set; }

    /// <summary>Numbers the new names front to back, at {n} or at the end.</summary>
    [Parameter(ParameterSetName = MatchSet)]
    [Parameter(ParameterSetName = NewNameSet)]
    public SwitchParameter Number { get; set; }

    /// <summary>The first number.</summary>
    [Parameter(ParameterSetName = MatchSet)]
    [Parameter(ParameterSetName = NewNameSet)]
    [ValidateRange(0, 999_999_999)]
    public int Start { get; set; } = 1;

    /// <summary>Fewest digits of a number.</summary>
    [Parameter(ParameterSetName = MatchSet)]
    [Parameter(ParameterSetName = NewNameSet)]
    [ValidateRange(1, 9)]
    public int Width { get; set; } = 1;

    /// <summary>Writes the names in the profile's form.</summary>
    [Parameter(Mandatory = true, ParameterSetName = NormalizeSet)]
    public SwitchParameter Normalize { get; set; }

    /// <summary>The profile: one that ships with the module by its name, the path of a file, or what Get-LayerProfile gives.</summary>
    [Parameter(ParameterSetName = NormalizeSet)]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    /// <summary>Gives the same part the same number in all files, which are read to the last before the first is renamed.</summary>
    [Parameter(ParameterSetName = NormalizeSet)]
    public SwitchParameter Consistent { get; set; }

    /// <summary>An older delivery, whose names the layers get that are found again: a layered file, its path, or a folder with a file of the same name.</summary>
    [Parameter(Mandatory = true, ParameterSetName = LikeSet)]
    [ValidateNotNull]
    public object Like { get; set; } = string.Empty;

    /// <summary>Lets layers of one group share a name.</summary>
    [Parameter(ParameterSetName = MatchSet)]
    [Parameter(ParameterSetName = NewNameSet)]
    [Parameter(ParameterSetName = MapSet)]
    [Parameter(ParameterSetName = LikeSet)]
    public SwitchParameter AllowDuplicate { get; set; }

    /// <inheritdoc/>
    private protected override string Action => "Rename layers";

    /// <summary>Frees what stops the work.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    private protected override bool HoldsFiles => Consistent;

    private NamingStyle Naming => (Profile ?? LayerProfiles.Default).Naming;

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        options = new RenameOptions { AllowDuplicate = AllowDuplicate, Numbering = Number ? new Numbering(Start, Width) : null };
        try
        {
            if (ParameterSetName == MapSet) entries = RenameMap.Read(this, Map);
            // A pattern that is none is the command's fault, not that of each file.
            if (ParameterSetName == MatchSet) CreateEdit(null);
            if (ParameterSetName == LikeSet) deliveries = DeliveryFiles.Find(this, Like);
            if (Normalize) normalizing = new NormalizeEdit(Naming);
        }
        catch (LayeredFileException error)
        {
            ThrowTerminatingError(ErrorRecords.FromCore(error, Match));
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
        }
    }

    /// <inheritdoc/>
    private protected override LayerEdit CreateEdit(LayerFile? file) => ParameterSetName switch
    {
        MatchSet => RenameEdit.ByPattern(Match, Replacement, CaseSensitive, options),
        MapSet => RenameEdit.ByList(entries, Reverse, options),
        NormalizeSet => normalizing!,
        LikeSet => RenameEdit.ByRecovery(recovery = Recover(file!), options),
        _ => RenameEdit.ByFunction((layer, _) => NewNames.For(layer, NewName), options),
    };

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override IEnumerable<RenamePreview> Describe(EditPlan plan, LayerFile file, IReadOnlyList<Layer> layers)
    {
        if (normalizing is not null) return normalizing.Explain(file, layers).Where(row => row.New != row.Layer.Name).Select(row => new NormalizePreview(row, file.Path));
        if (recovery is not null) return recovery.Explain(layers).Where(row => row.Old != row.Layer.Name).Select(row => new RecoveryPreview(row, file.Path));
        return plan.Steps.Select(step => new RenamePreview(step, file.Path));
    }

    /// <inheritdoc/>
    private protected override void Prepare(HeldFiles files) => normalizing = files.NameAlike(Naming);

    private NameRecovery Recover(LayerFile file)
    {
        if (deliveries!.Take(file.Path) is not { } before) throw new RefusedException(ErrorRecords.BadArgument("NoReference", $"{file.Path}: There is no file of this name in {Like}. Name the older file itself.", file));
        try
        {
            return NameRecovery.Find(before.Open(), file, stopping.Token);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }
}
