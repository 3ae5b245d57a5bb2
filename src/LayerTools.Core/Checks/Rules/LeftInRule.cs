using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>Asks for something in the parts of a figure that a rig cannot take, and that baking turns into plain pixels.</summary>
internal abstract class LeftInRule : CheckRule
{
    /// <summary>What is wrong with a layer, as a sentence.</summary>
    private protected abstract string Message { get; }

    /// <summary>Whether a layer has it.</summary>
    private protected abstract bool IsLeftIn(Layer layer);

    internal override IEnumerable<Finding> Check(CheckContext context) =>
        from layer in context.File.GetLayers()
        where context.RoleOf(layer) == Measures.LayerRole.Part && IsLeftIn(layer)
        select Find(context, layer, Message, Remedy.Edit(context.File, "ConvertTo-RigFile"));
}
