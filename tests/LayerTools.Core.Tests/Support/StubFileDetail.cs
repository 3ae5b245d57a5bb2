using LayerTools.Model;

namespace LayerTools.Tests.Support;

/// <summary>A file format's part of a file in tests that need no format.</summary>
internal sealed class StubFileDetail : FileDetail
{
    public override IEnumerable<int> HiddenIds => [];

    public byte[]? Profile { get; init; }

    public override ByteSource? ColorProfile => Profile is null ? null : new MemoryBytes(Profile);

    public override LayerDetail CreateLayerDetail(LayerKind kind) => new StubLayerDetail();

    public override FileDetail ToEightBitRgb(LayerFile file, bool keepsPicture, SpoolFile spool) => new StubFileDetail();

    public override FileDetail Rescale(LayerFile file, CanvasScale scale, ResampleFilter filter, SpoolFile spool, CancellationToken cancellation) => new StubFileDetail();

    public override void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight)
    {
        // Nothing of a stub file has a place on the canvas.
    }
}
