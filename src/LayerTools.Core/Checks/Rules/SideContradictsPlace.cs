using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>A part whose name says one side and that lies on the other.</summary>
internal sealed class SideContradictsPlace : PartRule
{
    /// <summary>From here on the names as a whole mean the other side.</summary>
    private const int Many = 3;

    public override string Id => nameof(SideContradictsPlace);

    public override string Title => "The name says another side than the place";

    public override string Reason => "The profile says whose left is meant: the figure's own left lies in the right half of the canvas (common practice), the viewer's in the left. Asked of parts that lie with at least the limit, in per cent of their width, beyond the centre line; not of a pair whose parts lie in the right order, as in a turned head.";

    public override Severity DefaultSeverity => Severity.Error;

    public override double? DefaultLimit => 90;

    public override string LimitUnit => "%";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        var sided = PartsOf(context).Where(part => !part.IsEmpty && Opposites.SideOf(part.Layer) != Side.None)
            .GroupBy(part => FindNamed(part.Layer), part => part.Seen)
            .ToDictionary(named => named.Key, named => named.Aggregate(Bounds.Empty, (all, box) => all.Union(box)));
        var wrong = sided.Where(item => Beyond(context, item.Key, item.Value) >= limit && !IsInOrder(context, item.Key, sided)).Select(item => item.Key).OrderBy(layer => layer.LayerNumber).ToList();
        var right = sided.Count(item => Beyond(context, item.Key, item.Value) <= 100 - limit);
        if (wrong.Count >= Many && wrong.Count > right) return [FindAll(context, wrong.Count, wrong.Count + right)];
        return wrong.Select(layer => Find(
            context,
            layer,
            $"Its name says {Say(layer.Side)}, but it lies in the {(IsRightHalf(context, layer) ? "left" : "right")} half of the canvas, which is {OwnerOf(context)} {Say(Opposite(layer.Side))}.",
            Advise(context, layer, wrong),
            FormattableString.Invariant($"{Beyond(context, layer, sided[layer]):0.#} % beyond the centre line"),
            FormattableString.Invariant($"less than {limit:0.##} %")));
    }

    private Finding FindAll(CheckContext context, int wrong, int all)
    {
        var other = context.Profile.Naming.Sides.Owner == SideOwner.Character ? SideOwner.Viewer : SideOwner.Character;
        return Find(
            context,
            $"Left and right are the other way round throughout: the profile means {OwnerOf(context)} left and right.",
            $"Use a profile whose sides.owner is {other.ToString().ToLowerInvariant()}, or swap the sides in all names.",
            FormattableString.Invariant($"{wrong} of {all} names"),
            "none");
    }

    /// <summary>The layer or group whose name says the side.</summary>
    private static Layer FindNamed(Layer layer)
    {
        while (layer is { Side: Side.None, Parent: { IsRoot: false } parent }) layer = parent;
        return layer;
    }

    /// <summary>How much of a box's width lies on the wrong side of the centre line, in per cent.</summary>
    private static double Beyond(CheckContext context, Layer layer, Bounds box)
    {
        var axis = context.FigureAxis ?? context.File.Axis;
        var leftOfIt = Math.Min(Math.Max(axis - box.Left, 0), box.Width) / box.Width;
        return 100 * (IsRightHalf(context, layer) ? leftOfIt : 1 - leftOfIt);
    }

    private static bool IsInOrder(CheckContext context, Layer layer, Dictionary<Layer, Bounds> sided)
    {
        if (context.Opposites.Find(layer) is not { } opposite || !sided.TryGetValue(opposite, out var other)) return false;
        var distance = (sided[layer].Left + (long)sided[layer].Right) - (other.Left + (long)other.Right);
        return IsRightHalf(context, layer) ? distance > 0 : distance < 0;
    }

    private static bool IsRightHalf(CheckContext context, Layer layer) => (layer.Side == Side.Left) == (context.Profile.Naming.Sides.Owner == SideOwner.Character);

    /// <summary>Renames the part or, where its opposite is wrong as well, both at once.</summary>
    private static string Advise(CheckContext context, Layer layer, List<Layer> wrong)
    {
        var name = SideName.Swap(layer.Name);
        if (context.Opposites.Find(layer) is not { } opposite || !wrong.Contains(opposite)) return Remedy.Edit(layer, $"Rename-Layer -NewName {Quoted.Of(name)}");
        var numbers = FormattableString.Invariant($"{Math.Min(layer.LayerNumber, opposite.LayerNumber)}, {Math.Max(layer.LayerNumber, opposite.LayerNumber)}");
        return Remedy.Edit(context.File, $"Rename-Layer -Map @{{ {Quoted.Of(layer.Name)} = {Quoted.Of(name)}; {Quoted.Of(opposite.Name)} = {Quoted.Of(SideName.Swap(opposite.Name))} }} -LayerNumber {numbers}");
    }

    private static Side Opposite(Side side) => side == Side.Left ? Side.Right : Side.Left;

    private static string Say(Side side) => side.ToString().ToLowerInvariant();

    private static string OwnerOf(CheckContext context) => context.Profile.Naming.Sides.Owner == SideOwner.Character ? "the figure's own" : "the viewer's";
}
