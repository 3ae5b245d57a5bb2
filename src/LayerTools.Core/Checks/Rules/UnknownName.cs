using LayerTools.Measures;
using LayerTools.Names;
using LayerTools.Profiles;

namespace LayerTools.Checks.Rules;

/// <summary>A name of which the vocabulary has no word.</summary>
internal sealed class UnknownName : CheckRule
{
    public override string Id => nameof(UnknownName);

    public override string Title => "The name is in no vocabulary";

    public override string Reason => "A part whose name nobody knows has no place in the stack and cannot be compared from file to file. Told by the words of the profile's vocabulary; sketches, guides, backdrops and names that programs give are not asked about.";

    public override Severity DefaultSeverity => Severity.Note;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Profile.Naming.Vocabulary.Parts.Count == 0) return [];
        return
            from layer in context.File.GetLayers()
            where context.RoleOf(layer) == LayerRole.Part && context.NameOf(layer).Part is null && !DefaultNames.IsDefault(layer.Name)
            select Find(context, layer, "The profile's vocabulary has none of the name's words.",
                Remedy.Show(context.File, $"Rename-Layer {Remedy.Choose(layer)} -Normalize{ChooseProfile(context.Profile)} -Preview"));
    }

    private static string ChooseProfile(LayerProfile profile) =>
        profile.Path is { } path ? $" -Profile {Quoted.Of(path)}" : LayerProfiles.FindShipped(profile.Name) is { } shipped ? $" -Profile {Quoted.Of(shipped.Name)}" : string.Empty;
}
