using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>A name that a program gave.</summary>
internal sealed class DefaultLookingName : CheckRule
{
    public override string Id => nameof(DefaultLookingName);

    public override string Title => "The name is one that programs give";

    public override string Reason => "Whoever moves the figure cannot tell what 'Layer 37' is. A word for a layer, a group or a shape in one of many languages, with or without a number or a word for a copy, and numbers alone count.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context) =>
        from layer in context.File.GetLayers()
        where DefaultNames.IsDefault(layer.Name)
        select Find(context, layer, "The name does not say what the layer is.", Remedy.Show(context.File, $"Rename-Layer {Remedy.Choose(layer)} -NewName 'what it is' -Preview"));
}
