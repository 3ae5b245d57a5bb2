using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Where new names come from.</summary>
internal abstract class NameSource
{
    /// <summary>Proposes names, unchecked, for those of the layers that it has a say about, in their order.</summary>
    /// <param name="file">The file.</param>
    /// <param name="layers">The chosen layers, front to back.</param>
    /// <param name="firstNumber">The first of the running numbers.</param>
    /// <param name="warnings">Takes what the user should know.</param>
    public abstract IReadOnlyList<(Layer Layer, string Name)> Propose(LayerFile file, IReadOnlyList<Layer> layers, int firstNumber, List<string> warnings);
}
