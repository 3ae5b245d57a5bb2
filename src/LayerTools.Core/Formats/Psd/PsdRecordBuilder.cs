using LayerTools.Formats.Psd.Blocks;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Makes the record that says what a layer of the model says; what did not change is kept byte for byte.</summary>
internal sealed class PsdRecordBuilder(PsdHabits habits, PsdEncoding encoding)
{
    public PsdRecord Build(Layer layer)
    {
        var record = ((PsdLayerDetail)layer.Detail).Record;
        var stored = PsdModelLoader.LoadLayer(record, habits);
        return record with
        {
            Bounds = layer.Bounds,
            Planes = layer.IsGroup && layer.Planes.Count == 0 ? record.Planes : layer.Planes,
            BlendKey = BuildBlendKey(layer, record),
            Opacity = layer.OpacityByte,
            Clipping = layer.Clipped == (record.Clipping != 0) ? record.Clipping : (byte)(layer.Clipped ? 1 : 0),
            Flags = (byte)(layer.Visible ? record.Flags & ~PsdRecord.Hidden : record.Flags | PsdRecord.Hidden),
            MaskData = BuildMaskData(layer, stored, record),
            LegacyName = BuildLegacyName(layer, stored, record, out var padding),
            LegacyNamePadding = padding,
            Blocks = BuildBlocks(layer, stored, record),
        };
    }

    /// <summary>A group's mode stands in its divider, where there is one that holds it; the record's own key is then left alone.</summary>
    private static uint BuildBlendKey(Layer layer, PsdRecord record)
    {
        var inDivider = layer.IsGroup && (DividerBlock.ReadBlendKey(record.GetData("lsct")) ?? DividerBlock.ReadBlendKey(record.GetData("lsdk"))) is not null;
        return inDivider ? record.BlendKey : BlendModeKeys.Write(layer.BlendMode, record.BlendKey);
    }

    private byte[] BuildMaskData(Layer layer, Layer stored, PsdRecord record)
    {
        if (layer.Mask is null) return stored.Mask is null ? record.MaskData : [];
        if (encoding == PsdEncoding.KeepUnchanged && stored.Mask is not null && layer.Mask.Equals(stored.Mask)) return record.MaskData;
        const int UsualLength = 20;
        var output = new PsdOutput();
        PsdMaskData.Store(layer.Mask, output);
        var kept = stored.Mask is null ? 0 : PsdMaskData.Load(record.MaskData, PsdModelLoader.HasPaintedMask(record), out _);
        if (stored.Mask is null) output.WriteZeros(Math.Max(0, UsualLength - (int)output.Length));
        else output.Write(record.MaskData.AsSpan(kept));
        return output.ToArray();
    }

    private byte[] BuildLegacyName(Layer layer, Layer stored, PsdRecord record, out byte[] padding)
    {
        padding = record.LegacyNamePadding;
        var isUnchanged = layer.Name == stored.Name;
        if (isUnchanged && (encoding == PsdEncoding.KeepUnchanged || !habits.Names.Explains(record.LegacyName, layer.Name))) return record.LegacyName;
        var name = habits.Names.Encode(layer.Name);
        padding = new byte[(4 - ((name.Length + 1) & 3)) & 3];
        return name;
    }

    private List<PsdBlock> BuildBlocks(Layer layer, Layer stored, PsdRecord record)
    {
        var blocks = new List<PsdBlock>(record.Blocks.Count + 2);
        var seen = new HashSet<uint>();
        foreach (var block in record.Blocks)
        {
            seen.Add(block.Key);
            blocks.Add(Rebuild(block, layer, stored));
        }

        var isNew = record.LegacyName.Length == 0 && !record.Has("luni");
        foreach (var known in LayerBlocks.All.Where(known => !seen.Contains(PsdKey.Parse(known.Key))))
        {
            var isMissed = known is UnicodeNameBlock && isNew ? layer.Name.Length > 0 : known.IsMissed(layer, habits) && !known.IsMissed(stored, habits);
            if (isMissed) blocks.Add(new PsdBlock(known.Key, []).With(known.Store([], layer, habits), habits.PadsBlocks));
        }

        return blocks;
    }

    private PsdBlock Rebuild(PsdBlock block, Layer layer, Layer stored)
    {
        if (LayerBlocks.Find(block.Key) is not { } known || block.Data is not MemoryBytes memory) return block;
        // Of two blocks with one key, one may contradict the model from the start; it is not ours to judge. But a name that nobody can read gives way to a new one.
        var isUnreadableName = known is UnicodeNameBlock && !UnicodeNameBlock.TryRead(memory.Bytes, out _, out _);
        if (isUnreadableName ? layer.Name == stored.Name : !known.Says(memory.Bytes, stored)) return block;
        if (encoding == PsdEncoding.KeepUnchanged && known.Says(memory.Bytes, layer)) return block;
        var data = known.Store(memory.Bytes, layer, habits);
        return data.Length == memory.Bytes.Length ? block with { Data = new MemoryBytes(data) } : block.With(data, habits.PadsBlocks);
    }
}
