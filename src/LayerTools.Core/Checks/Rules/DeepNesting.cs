namespace LayerTools.Checks.Rules;

/// <summary>Groups in groups in groups.</summary>
internal sealed class DeepNesting : CheckRule
{
    public override string Id => nameof(DeepNesting);

    public override string Title => "Groups are nested deeply";

    public override string Reason => "Deep groups hide parts from whoever rigs the figure, and some programs read only so many levels. Counted are the groups around a layer; the outermost layers beyond the limit are named. The limit is this module's own choice.";

    public override Severity DefaultSeverity => Severity.Note;

    public override double? DefaultLimit => 4;

    public override string LimitUnit => "groups";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = (int)LimitFor(context);
        return
            from layer in context.File.GetLayers()
            where layer.Depth == limit + 1
            select Find(context, layer, "The layer lies deep in groups.", Remedy.Edit(layer, $"Move-Layer -After {Quoted.Of(layer.GetParent()!.LayerPath)}"), Levels(layer.Depth), $"at most {Levels(limit)}");
    }

    private static string Levels(int count) => count == 1 ? "1 group" : FormattableString.Invariant($"{count} groups");
}
