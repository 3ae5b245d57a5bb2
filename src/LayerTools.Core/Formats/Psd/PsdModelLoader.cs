using LayerTools.Errors;
using LayerTools.Formats.Psd.Blocks;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Makes the model of a file from what is stored.</summary>
internal static class PsdModelLoader
{
    private const int DeepestNesting = 1_000;

    public static LayerFile Load(SourceFile source, PsdFileDetail detail, ReadLimits limits)
    {
        var records = detail.LayerInfo?.Records ?? [];
        detail.Habits = TellHabits(records);
        var header = detail.Header;
        var file = new LayerFile(source.Path, header.Format, header.Width, header.Height, (ColorMode)header.Mode, header.Depth, detail)
        {
            Source = source,
            Ppi = PsdResolution.Read(detail),
            Guides = PsdGuides.Read(detail),
        };
        file.Warnings = BuildTree(file, detail, records, limits);
        file.Renumber();
        return file;
    }

    /// <summary>Fills a layer from its record.</summary>
    public static Layer LoadLayer(PsdRecord record, PsdHabits habits)
    {
        var layer = new Layer(LayerTraits.TellKind(record), ReadName(record, habits), new PsdLayerDetail(record, null))
        {
            Bounds = record.Bounds,
            BlendMode = BlendModeKeys.Read(record.BlendKey),
            OpacityByte = record.Opacity,
            Clipped = record.Clipping != 0,
            Visible = (record.Flags & PsdRecord.Hidden) == 0,
            Locked = (record.Flags & PsdRecord.TransparencyLocked) != 0,
            Planes = [.. record.Planes],
        };
        PsdMaskData.Load(record.MaskData, HasPaintedMask(record), out var mask);
        layer.Mask = mask;
        foreach (var block in record.Blocks)
        {
            if (block.Data is MemoryBytes memory) LayerBlocks.Find(block.Key)?.Load(memory.Bytes, layer);
        }

        return layer;
    }

    public static bool HasPaintedMask(PsdRecord record) => record.Planes.Any(plane => plane.Role == PlaneRole.PaintedMask);

    private static PsdHabits TellHabits(IReadOnlyList<PsdRecord> records)
    {
        int? filling = null;
        var padsBlocks = false;
        foreach (var record in records)
        {
            filling ??= UnicodeNameBlock.TellFilling(record.GetData("luni"));
            foreach (var block in record.Blocks) padsBlocks |= block.Padding.Length > 0;
        }

        return new PsdHabits(() => FindLegacyNames(records), filling ?? 4, padsBlocks);
    }

    private static LegacyNames FindLegacyNames(IReadOnlyList<PsdRecord> records)
    {
        var pairs = new List<(byte[], string)>();
        foreach (var record in records)
        {
            if (UnicodeNameBlock.TryRead(record.GetData("luni"), out var name, out _)) pairs.Add((record.LegacyName, name));
        }

        return LegacyNames.Infer(pairs);
    }

    /// <summary>The Unicode name; the short one where there is none that can be read.</summary>
    private static string ReadName(PsdRecord record, PsdHabits habits) =>
        UnicodeNameBlock.TryRead(record.GetData("luni"), out var name, out _) ? name : LegacyNames.TryDecodeAscii(record.LegacyName) ?? habits.Names.Decode(record.LegacyName);

    /// <summary>Reads the flat list, from the front, into a tree; dividers that do not match are kept where they are and warned about.</summary>
    private static List<string> BuildTree(LayerFile file, PsdFileDetail detail, IReadOnlyList<PsdRecord> records, ReadLimits limits)
    {
        var warnings = new List<string>();
        var open = new Stack<Layer>();
        var closings = new List<PsdRecord>();
        open.Push(file.Root);
        var paths = new PathLengths(file.Path, limits);
        var deepest = Math.Min(limits.GroupDepth, DeepestNesting);
        for (var i = records.Count - 1; i >= 0; i--)
        {
            var record = records[i];
            if (LayerTraits.TellDividerType(record) == DividerBlock.GroupEnd)
            {
                if (open.Count > 1)
                {
                    ((PsdLayerDetail)open.Pop().Detail).Closing = record;
                    closings.Add(record);
                }
                else
                {
                    warnings.Add("A group ends that never began; it is kept in the file and left out of the tree.");
                    KeepStray(file, detail, record);
                }

                continue;
            }

            var layer = LoadLayer(record, detail.Habits);
            open.Peek().Append(layer);
            paths.Add(layer, open.Count - 1);
            warnings.AddRange(FindOddities(record).Select(oddity => $"The layer '{layer.LayerPath}' {oddity}"));
            if (!layer.IsGroup) continue;
            if (open.Count > deepest)
            {
                throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"layer record {i + 1} of {records.Count}", -1,
                    $"Groups are nested deeper than {deepest}.", deepest < DeepestNesting ? $"If you trust the file, raise the limit: Get-LayerFile -Limit @{{ {nameof(ReadLimits.GroupDepth)} = ... }}." : "No deeper nesting can be read; take groups apart where the file was made.");
            }

            open.Push(layer);
        }

        while (open.Count > 1) warnings.Add($"The group '{open.Pop().LayerPath}' never ends; everything behind it counts as its content.");
        detail.Closings = closings;
        return warnings;
    }

    private static IEnumerable<string> FindOddities(PsdRecord record)
    {
        const int LongestFilling = 3;
        const int ShortestMask = 18;
        if (record.Tail.Length > LongestFilling) yield return $"has {record.Tail.Length} bytes that are no block; they are kept as they are.";
        if (record.MaskData.Length is > 0 and < ShortestMask) yield return $"has mask data of {record.MaskData.Length} bytes, too few for a mask; they are kept as they are.";
        if (record.Has("luni") && !UnicodeNameBlock.TryRead(record.GetData("luni"), out _, out _)) yield return "has a Unicode name that cannot be read; its short name is used.";
        if (record.Has("lsct") && record.GetData("lsct").Length < 4) yield return "has a group divider that is too short; it counts as an ordinary layer.";
    }

    private static void KeepStray(LayerFile file, PsdFileDetail detail, PsdRecord record)
    {
        var outermost = file.GetChildren();
        if (outermost.Count > 0 && outermost[outermost.Count - 1].Detail is PsdLayerDetail last) last.StraysBehind = [.. last.StraysBehind, record];
        else detail.StraysInFront = [.. detail.StraysInFront, record];
    }
}
