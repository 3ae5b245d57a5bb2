using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Edits;

/// <summary>Reflects the channels of layers: unpacks, turns and packs each row, on all processors, with a few rows in memory.</summary>
internal static class MirrorPixels
{
    /// <summary>The reflected channels of each pair, in their order.</summary>
    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, or the temporary folder is full.</exception>
    public static IReadOnlyList<Plane[]> Reflect(LayerFile file, IReadOnlyList<MirrorPair> pairs)
    {
        var planes = pairs.Select(pair => new Plane[pair.Source.Planes.Count]).ToList();

        // The longest first and one at a time, so that no processor is left with a long one at the end.
        var channels = pairs.SelectMany((pair, i) => pair.Source.Planes.Select((plane, j) => (pair.Source, plane, i, j))).OrderByDescending(channel => channel.plane.StoredLength).ToList();
        using var reader = new PixelReader(file);
        try
        {
            Parallel.ForEach(Partitioner.Create(channels, EnumerablePartitionerOptions.NoBuffering), channel => planes[channel.i][channel.j] = Reflect(file, reader, channel.Source, channel.plane));
        }
        catch (AggregateException errors)
        {
            var first = errors.Flatten().InnerExceptions[0];
            if (FileAccessErrors.TryDescribe(first, Path.GetTempPath()) is { } described) throw described;
            ExceptionDispatchInfo.Capture(first).Throw();
        }

        return planes;
    }

    private static Plane Reflect(LayerFile file, PixelReader reader, Layer layer, Plane plane)
    {
        if (!plane.HasCompressionWord || plane.Data.Length == 0 || layer.GetPlaneBounds(plane.Role).IsEmpty) return plane;
        using var rows = reader.OpenRows(layer, plane);
        if (rows is PackBitsRows { BitDepth: 8 } packed) return PlanePacker.PackFlipped(plane.Role, file.Format, packed, file.Spool);
        return PlanePacker.Pack(plane.Role, reader.ReadCompression(plane), rows.Width, rows.Height, rows.BitDepth, file.Format, ReadReflected, file.Spool);

        void ReadReflected(int y, Span<byte> row)
        {
            rows.ReadRow(row);
            Flip.Row(row, rows.Width, rows.BitDepth);
        }
    }
}
