using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Renames layers by a pattern, a name, a script block, a list or the form that a profile wants.</summary>
[Cmdlet(VerbsCommon.Rename, "Layer", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low, DefaultParameterSetName = MatchSet)]
[OutputType(typeof(LayerFile), typeof(Layer), typeof(RenamePreview), typeof(NormalizePreview))]
public sealed class RenameLayerCommand : HoldingEditCommand
{
    private const string MatchSet = "Match";
    private const string NewNameSet = "NewName";
    private const string MapSet = "Map";
    private const string NormalizeSet = "Normalize";

    private IReadOnlyList<RenameEntry> entries = [];
    private NormalizeEdit? normalizing;
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

    /// <summary>Lets layers of one group share a name.</summary>
    [Parameter(ParameterSetName = MatchSet)]
    [Parameter(ParameterSetName = NewNameSet)]
    [Parameter(ParameterSetName = MapSet)]
    public SwitchParameter AllowDuplicate { get; set; }

    /// <inheritdoc/>
    private protected override string Action => "Rename layers";

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
        _ => RenameEdit.ByFunction((layer, _) => NewNames.For(layer, NewName), options),
    };

    /// <inheritdoc/>
    private protected override IEnumerable<RenamePreview> Describe(EditPlan plan, LayerFile file, IReadOnlyList<Layer> layers) => normalizing is null
        ? plan.Steps.Select(step => new RenamePreview(step, file.Path))
        : normalizing.Explain(file, layers).Where(row => row.New != row.Layer.Name).Select(row => new NormalizePreview(row, file.Path));

    /// <inheritdoc/>
    private protected override void Prepare(HeldFiles files) => normalizing = files.NameAlike(Naming);
}
