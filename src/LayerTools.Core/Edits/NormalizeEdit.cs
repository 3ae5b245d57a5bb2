using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>
/// Puts names into a profile's form. Each name is taken apart (see <see cref="NameReader"/>) and written anew: part, what is left over, side, number. What is not
/// understood, or not sure enough, stays as it is.
/// <para>Layers of one group never come to share a name. Where several would, they are numbered: numbers that tell them apart already are kept, the others get
/// the smallest free ones front to back. A part that is alone in its group keeps a number that it has and gets none. Numbers of different groups are independent.
/// Doing it again changes nothing.</para>
/// </summary>
public sealed class NormalizeEdit : LayerEdit
{
    private const int MostTold = 5;

    private readonly NamingStyle style;
    private readonly IReadOnlyDictionary<Layer, NormalizedLayer>? worked;

    /// <summary>Names each file on its own.</summary>
    /// <param name="style">The form.</param>
    public NormalizeEdit(NamingStyle style)
    {
        this.style = style ?? throw new ArgumentNullException(nameof(style));
    }

    private NormalizeEdit(NamingStyle style, IReadOnlyDictionary<Layer, NormalizedLayer> worked)
        : this(style)
    {
        this.worked = worked;
    }

    /// <summary>
    /// Names several files so that the same part gets the same number in all of them. Parts are the same if they lie in groups of the same name, would have
    /// the same name but for the number, and have the same number, or both had none and the same old name.
    /// </summary>
    /// <param name="style">The form.</param>
    /// <param name="selections">The chosen layers of each file; the edit can only be planned for these.</param>
    public static NormalizeEdit Consistent(NamingStyle style, IReadOnlyList<IReadOnlyList<Layer>> selections) =>
        new(style, new NormalizedNames(style).Find(selections, consistent: true));

    /// <summary>What becomes of each of some layers of a file, front to back, and why.</summary>
    public IReadOnlyList<NormalizedLayer> Explain(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var chosen = Selection.InStackOrder(file, layers);
        var names = worked ?? new NormalizedNames(style).Find([chosen], consistent: false);
        return [.. chosen.Select(layer => names[layer])];
    }

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var names = Explain(file, layers);
        var changed = names.Where(item => item.New is not null && item.New != item.Layer.Name).ToList();
        return new EditPlan(file, [.. changed.Select(item => new EditStep(item.Layer, RenameEdit.Property, item.Layer.Name, item.New))], changesPicture: false, () =>
        {
            foreach (var item in changed) item.Layer.Name = item.New!;
        })
        {
            Warnings = Warn([.. names.Where(item => item.New is null).Select(item => item.Layer)]),
        };
    }

    private static IReadOnlyList<string> Warn(IReadOnlyList<Layer> left)
    {
        if (left.Count == 0) return [];
        var more = left.Count > MostTold ? FormattableString.Invariant($" and {left.Count - MostTold} more") : string.Empty;
        var what = left.Count == 1 ? "1 name is not understood and stays" : FormattableString.Invariant($"{left.Count} names are not understood and stay");
        return [$"{what}: {QuotedPaths.Join(left.Take(MostTold))}{more}. -Preview says why; a vocabulary in the profile can teach more words."];
    }
}
