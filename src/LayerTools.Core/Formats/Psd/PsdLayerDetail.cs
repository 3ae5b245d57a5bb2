using LayerTools.Formats.Psd.Blocks;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>The stored record behind a layer, and the records around it that make a group.</summary>
internal sealed class PsdLayerDetail(PsdRecord record, PsdRecord? closing) : LayerDetail
{
    private PsdRecord record = record;
    private LayerFeatures? features;

    public PsdRecord Record
    {
        get => record;
        set
        {
            record = value;
            features = null;
        }
    }

    /// <summary>The record that ends a group, farther back than all of its layers; null for a group that is never ended.</summary>
    public PsdRecord? Closing { get; set; } = closing;

    /// <summary>Group ends without a group, found directly behind this layer and written there again.</summary>
    public IReadOnlyList<PsdRecord> StraysBehind { get; set; } = [];

    public override LayerFeatures Features => features ??= LayerTraits.TellFeatures(record);

    public override LayerDetail Copy() => new PsdLayerDetail(WithoutId(record), Closing is null ? null : WithoutId(Closing));

    public override void Reflect(int doubledAxis, int canvasWidth) => MapPaths(data => VectorMaskBlock.Reflect(data, doubledAxis, canvasWidth));

    public override void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight) =>
        MapPaths(data => VectorMaskBlock.Recanvas(data, right, down, oldWidth, oldHeight, newWidth, newHeight));

    public override void DropLiveContent()
    {
        var live = new HashSet<uint>(LayerTraits.LiveContentKeys.Select(PsdKey.Parse));
        Record = record with { Blocks = [.. record.Blocks.Where(block => !live.Contains(block.Key))] };
    }

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

    private static PsdRecord WithoutId(PsdRecord record) => record with { Blocks = [.. record.Blocks.Where(block => block.Key != PsdKey.Parse("lyid"))] };
}
