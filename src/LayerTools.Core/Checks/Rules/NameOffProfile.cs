using LayerTools.Edits;
using LayerTools.Measures;
using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>A name that is understood, but not written as the profile says.</summary>
internal sealed class NameOffProfile : CheckRule
{
    public override string Id => nameof(NameOffProfile);

    public override string Title => "The name is not written as the profile says";

    public override string Reason => "One way of writing names makes parts easy to find, and scripts and rigs the same for all figures. Asked of parts and groups whose names are understood with the certainty of the limit, 0 to 100 %, see Rename-Layer -Normalize.";

    public override Severity DefaultSeverity => Severity.Note;

    public override double? DefaultLimit => 90;

    public override string LimitUnit => "%";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var edit = new NormalizeEdit(context.Profile.Naming);
        var least = LimitFor(context) / 100;
        var figure = context.File.GetLayers().Where(layer => context.RoleOf(layer) == LayerRole.Part).ToList();
        // Named once more without those that are less sure, since the numbers of the others must not count on their new names.
        var sure = edit.Explain(context.File, figure).Where(name => name.New is not null && name.Certainty >= least).Select(name => name.Layer).ToList();
        foreach (var name in edit.Explain(context.File, sure))
        {
            if (name.New is not { } wanted || wanted == name.Layer.Name || wanted == TrimmedName.Of(name.Layer.Name)) continue;
            yield return Find(context, name.Layer, "The name is understood, but not written in the profile's form.", Remedy.Repair(context, Id), name.Layer.Name, wanted);
        }
    }
}
