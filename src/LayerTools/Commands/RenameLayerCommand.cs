using System.Globalization;
using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Renames layers by a pattern, a name, a script block or a list.</summary>
[Cmdlet(VerbsCommon.Rename, "Layer", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low, DefaultParameterSetName = MatchSet)]
[OutputType(typeof(LayerFile), typeof(Layer), typeof(RenamePreview))]
public sealed class RenameLayerCommand : MarkedLayerEditCommand
{
    private const string MatchSet = "Match";
    private const string NewNameSet = "NewName";
    private const string MapSet = "Map";

    private IReadOnlyList<RenameEntry> entries = [];
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

    /// <summary>Lets layers of one group share a name.</summary>
    [Parameter]
    public SwitchParameter AllowDuplicate { get; set; }

    /// <summary>Gives path, old and new name of each layer that would change, and changes nothing.</summary>
    [Parameter]
    public SwitchParameter Preview { get; set; }

    /// <inheritdoc/>
    private protected override string Action => "Rename layers";

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        options = new RenameOptions { AllowDuplicate = AllowDuplicate, Numbering = Number ? new Numbering(Start, Width) : null };
        try
        {
            if (ParameterSetName == MapSet) entries = RenameMap.Read(this, Map);
            // A pattern that is none is the command's fault, not that of each file.
            if (ParameterSetName == MatchSet) CreateEdit(null);
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
        _ => RenameEdit.ByFunction((layer, _) => CreateName(layer), options),
    };

    /// <inheritdoc/>
    private protected override IReadOnlyList<Layer>? Edit(LayerFile file, IReadOnlyList<Layer> layers)
    {
        if (!Preview) return base.Edit(file, layers);
        var plan = CreateEdit(file).Plan(file, layers);
        WriteWarnings(file.Name, plan.Warnings);
        WriteObject(plan.Steps.Select(step => new RenamePreview(step, file.Path)), enumerateCollection: true);
        return [];
    }

    /// <inheritdoc/>
    private protected override void WriteResult(LayerFile file)
    {
        if (!Preview) base.WriteResult(file);
    }

    private string? CreateName(Layer layer) =>
        PSObject.AsPSObject(NewName).BaseObject is ScriptBlock script ? LayerScript.Invoke(script, layer) : Convert.ToString(PSObject.AsPSObject(NewName).BaseObject, CultureInfo.InvariantCulture);
}
