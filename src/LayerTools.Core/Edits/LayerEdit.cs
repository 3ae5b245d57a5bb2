using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>One kind of edit: plans over a selection first, and changes nothing until the plan is applied.</summary>
public abstract class LayerEdit
{
    /// <summary>Works out what would change.</summary>
    /// <param name="file">The file.</param>
    /// <param name="layers">The chosen layers of that file, in any order.</param>
    /// <exception cref="Errors.LayeredFileException">The edit is refused; nothing has changed. The message lists every reason.</exception>
    public abstract EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers);
}
