namespace LayerTools.Model;

/// <summary>Gives ids that nothing in a file has: the largest plus one and on, or free ones from 1 where that does not exist.</summary>
internal sealed class IdSource
{
    private readonly HashSet<int> used;
    private int last;

    public IdSource(LayerFile file)
    {
        used = [.. file.GetLayers().Select(layer => layer.Id).OfType<int>(), .. file.Detail.HiddenIds];
        last = used.Count == 0 ? 0 : Math.Max(0, used.Max());
    }

    public int Next()
    {
        do
        {
            last = last < int.MaxValue ? last + 1 : 1;
        }
        while (!used.Add(last));
        return last;
    }
}
