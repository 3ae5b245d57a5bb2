using LayerTools.Formats.Psd.Blocks;
using LayerTools.Formats.Psd.Blocks.Adjustments;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd;

/// <summary>The stored record behind a layer, and the records around it that make a group.</summary>
internal sealed class PsdLayerDetail(PsdRecord record, PsdRecord? closing) : LayerDetail
{
    private PsdRecord record = record;
    private LayerFeatures? features;
    private Lazy<Adjustment?> adjustment = new(() => AdjustmentBlocks.Read(record));

    public PsdRecord Record
    {
        get => record;
        set
        {
            record = value;
            features = null;
            adjustment = new Lazy<Adjustment?>(() => AdjustmentBlocks.Read(value));
        }
    }

    /// <summary>The record that ends a group, farther back than all of its layers; null for a group that is never ended.</summary>
    public PsdRecord? Closing { get; set; } = closing;

    /// <summary>Group ends without a group, found directly behind this layer and written there again.</summary>
    public IReadOnlyList<PsdRecord> StraysBehind { get; set; } = [];

    public override VectorPath? VectorPath => VectorMaskBlock.Find(record);

    public override Artboard? Artboard => ArtboardDescriptors.Read(record);

    public override BlendingRules Blending => BlendingRecord.Read(record);

    public override LayerFeatures Features => features ??= LayerTraits.TellFeatures(record);

    public override Fill? Fill => DescriptorBlocks.ReadFill(record);

    public override IReadOnlyList<Effect> GetEffects(FileDetail file) => DescriptorBlocks.ReadEffects(record, (PsdFileDetail)file);

    public override Adjustment? Adjustment => adjustment.Value;

    public override IReadOnlyList<ByteSource> LiveContent => FindData(LayerTraits.DrawnContentKeys);

    public override IReadOnlyList<ByteSource> EffectContent => FindData(LayerTraits.AllEffectKeys);

    public override LayerDetail Copy() => new PsdLayerDetail(WithoutId(record), Closing is null ? null : WithoutId(Closing));

    public override void Reflect(int doubledAxis, int canvasWidth)
    {
        MapPaths(data => VectorMaskBlock.Reflect(data, doubledAxis, canvasWidth));
        MapArtboard(bounds => new Bounds(doubledAxis - bounds.Right, bounds.Top, doubledAxis - bounds.Left, bounds.Bottom));
    }

    public override void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight)
    {
        MapPaths(data => VectorMaskBlock.Recanvas(data, right, down, oldWidth, oldHeight, newWidth, newHeight));
        MapArtboard(bounds => new Bounds(bounds.Left + right, bounds.Top + down, bounds.Right + right, bounds.Bottom + down));
    }

    public override LayerDetail Rescale(CanvasScale scale, ICollection<string> notes) => With(RecordScaler.Scale(record, scale, notes));

    public override void DropLiveContent()
    {
        var live = new HashSet<uint>(LayerTraits.LiveContentKeys.Select(PsdKey.Parse));
        Record = record with { Blocks = [.. record.Blocks.Where(block => !live.Contains(block.Key))] };
    }

    public override LayerDetail ToPlain(bool keepsBlending)
    {
        var kept = new HashSet<uint>(LayerTraits.PlainKeys.Concat(keepsBlending ? LayerTraits.BlendingKeys : []).Select(PsdKey.Parse));
        return With(record with
        {
            MaskData = [],
            Flags = (byte)(record.Flags & ~PsdRecord.PixelsIrrelevant),
            BlendingRanges = keepsBlending ? record.BlendingRanges : [],
            Blocks = [.. record.Blocks.Where(block => kept.Contains(block.Key))],
            Tail = MemoryBytes.Empty,
        });
    }

    public override LayerDetail WithoutBlending(bool keepsEffects)
    {
        var dropped = new HashSet<uint>(LayerTraits.BackdropKeys.Concat(keepsEffects ? [] : LayerTraits.AllEffectKeys).Select(PsdKey.Parse));
        return With(record with { BlendingRanges = [], Blocks = [.. record.Blocks.Where(block => !dropped.Contains(block.Key))] });
    }

    public override LayerDetail WithoutMasks()
    {
        var dropped = new HashSet<uint>(VectorMaskBlock.Keys.Select(PsdKey.Parse));
        return With(record with
        {
            MaskData = [],
            Planes = [.. record.Planes.Where(plane => plane.Role is not (PlaneRole.UserMask or PlaneRole.PaintedMask))],
            Blocks = [.. record.Blocks.Where(block => !dropped.Contains(block.Key))],
        });
    }

    public override LayerDetail ForColorsOf(FileDetail file)
    {
        var planes = ((PsdFileDetail)file).EmptyPlanes();
        var changed = With(record with { Planes = planes });
        if (changed.Closing is not null) changed.Closing = changed.Closing with { Planes = planes };
        return changed;
    }

    private List<ByteSource> FindData(IEnumerable<string> keys) => [.. keys.Select(PsdKey.Parse).SelectMany(key => record.Blocks.Where(block => block.Key == key)).Select(block => block.Data)];

    private PsdLayerDetail With(PsdRecord changed) => new(changed, Closing) { StraysBehind = StraysBehind };

    private delegate byte[] PathMap(ReadOnlySpan<byte> data);

    private void MapPaths(PathMap map)
    {
        // The parameters of a live shape would contradict its moved outline.
        var liveShape = PsdKey.Parse("vogk");
        if (!record.Blocks.Any(block => VectorMaskBlock.IsKey(block.Key))) return;
        Record = record with
        {
            Blocks =
            [
                .. record.Blocks.Where(block => block.Key != liveShape)
                    .Select(block => VectorMaskBlock.IsKey(block.Key) && block.Data is MemoryBytes memory ? block with { Data = new MemoryBytes(map(memory.Bytes)) } : block),
            ],
        };
    }

    private void MapArtboard(Func<Bounds, Bounds> map)
    {
        var keys = ArtboardDescriptors.Keys.Select(PsdKey.Parse).ToList();
        if (!record.Blocks.Any(block => keys.Contains(block.Key))) return;
        Record = record with
        {
            Blocks = [.. record.Blocks.Select(block => keys.Contains(block.Key) && block.Data is MemoryBytes memory ? block with { Data = new MemoryBytes(ArtboardDescriptors.Map(memory.Bytes, map)) } : block)],
        };
    }

    private static PsdRecord WithoutId(PsdRecord record) => record with { Blocks = [.. record.Blocks.Where(block => block.Key != PsdKey.Parse("lyid"))] };
}
