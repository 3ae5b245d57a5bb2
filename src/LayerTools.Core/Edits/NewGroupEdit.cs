using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>
/// Makes a group: around the chosen layers, which keep their order, at the place of the front-most of them; or, if none is chosen, empty in front of everything.
/// A base takes the layers clipped to it along; a clipped layer without its base is released from its clipping. The group passes its layers' blending through.
/// </summary>
public sealed class NewGroupEdit : LayerEdit
{
    private readonly string name;

    /// <param name="name">The group's name.</param>
    public NewGroupEdit(string name) => this.name = name ?? throw new ArgumentNullException(nameof(name));

    /// <summary>Lets the group share its name with a layer beside it.</summary>
    public bool AllowDuplicate { get; init; }

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var relocation = Relocation.Of(file, layers);
        var first = relocation.Layers.Count > 0 ? relocation.Layers[0] : null;
        var parent = first?.Parent ?? file.Root;
        var staying = relocation.FindStaying(parent);
        var index = Relocation.FindLegalIndex(staying, first?.IndexInParent ?? 0, backwards: false);
        Check(file, staying);

        var group = new Layer(LayerKind.Group, name, file.Detail.CreateLayerDetail(LayerKind.Group)) { Id = file.CreateId(), BlendMode = BlendMode.PassThrough };
        var steps = new List<EditStep> { new(group, "Layer", null, name) };
        var path = parent.IsRoot ? group.PathSegment : $"{parent.LayerPath}/{group.PathSegment}";
        steps.AddRange(relocation.DescribeSteps(path));
        return new EditPlan(file, steps, !relocation.IsInOnePiece, () =>
        {
            parent.Insert(parent.GetChildren().Count, group);
            relocation.Apply(group, 0);
            group.Detach();
            parent.Insert(index, group);
        })
        {
            Warnings = [.. relocation.DescribeSideEffects()],
            Results = [group],
        };
    }

    private void Check(LayerFile file, List<Layer> siblings)
    {
        var refusal = new Refusal(file, "Making a group");
        if (NameRules.FindProblem(name) is { } problem) refusal.Add($"its name {problem}", NameRules.NameRemedy);
        foreach (var twin in siblings.Where(layer => !AllowDuplicate && NameRules.AreSame(layer.Name, name)))
        {
            refusal.Add($"'{twin.LayerPath}' (number {twin.LayerNumber}) has the name already", NameRules.DuplicateRemedy);
        }

        refusal.ThrowIfAny();
    }
}
