using LayerTools.Edits.Rig;
using LayerTools.Errors;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Measures;

/// <summary>Finds parts that consist of several painted islands. Pixels belong together where they touch at a side or a corner; masks count, opacity does not.</summary>
/// <param name="threshold">Pixels up to this opacity, 0 to 254, count as unpainted.</param>
public sealed class IslandFinder(int threshold = 0)
{
    /// <summary>The most islands of one part that are told one by one.</summary>
    public const int MostBoxes = 100;

    /// <summary>The chosen parts with more than one island, front to back; groups and adjustments have none.</summary>
    /// <param name="file">The file; it is not changed.</param>
    /// <param name="layers">The chosen layers.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    public IEnumerable<PartIslands> Find(LayerFile file, IReadOnlyList<Layer> layers, CancellationToken cancellation = default)
    {
        CompositorSupport.EnsureColors(file);
        using var drawer = new RigDrawer(file, cancellation);
        foreach (var layer in Selection.InStackOrder(file, layers).Where(layer => layer.Kind is not (LayerKind.Group or LayerKind.Adjustment)))
        {
            using var picture = drawer.Draw([RigClones.Alone(layer, _ => false)], RigContext.None);
            var islands = Find(picture);
            var largest = islands.Complete();
            if (islands.Count < 2) continue;
            yield return new PartIslands
            {
                FilePath = file.Path,
                LayerPath = layer.LayerPath,
                LayerNumber = layer.LayerNumber,
                Name = layer.Name,
                Count = islands.Count,
                SmallestArea = islands.SmallestArea,
                Boxes = [.. largest.Select(island => island.Box)],
                Areas = [.. largest.Select(island => island.Area)],
            };
        }
    }

    private RegionRows Find(RigPicture picture)
    {
        var islands = new RegionRows(MostBoxes);
        var row = new byte[Math.Max(0, picture.Painted.Width)];
        for (var y = picture.Painted.Top; y < picture.Painted.Bottom; y++)
        {
            picture.ReadAlpha(y, picture.Painted.Left, row);
            islands.BeginRow(y);
            for (var x = 0; x < row.Length;)
            {
                var from = x;
                while (x < row.Length && row[x] > threshold) x++;
                if (x > from) islands.Add(picture.Painted.Left + from, picture.Painted.Left + x);
                else x++;
            }
        }

        return islands;
    }
}
