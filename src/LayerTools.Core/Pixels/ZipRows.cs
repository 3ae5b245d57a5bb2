using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Rows of one zlib stream. No more is unpacked than the channel's rectangle holds, and a stream that has more is refused.</summary>
internal sealed class ZipRows : PlaneRows
{
    private readonly PlanePlace place;
    private readonly ByteSource data;
    private readonly OpenedSources opened;
    private readonly bool predicted;
    private Stream? inflater;
    private byte[] scratch = [];
    private int inflatedRows;

    public ZipRows(ByteSource data, int width, int height, int bitDepth, bool predicted, OpenedSources opened, PlanePlace place)
        : base(width, height, bitDepth)
    {
        if (predicted && bitDepth == 1) throw place.NotSupported("Differences between samples of 1 bit are not defined.");
        this.data = data;
        this.opened = opened;
        this.predicted = predicted;
        this.place = place;
    }

    public override void Dispose() => inflater?.Dispose();

    protected override void ReadNext(Span<byte> samples)
    {
        Inflate(samples);
        if (!predicted) return;
        if (BitDepth == 32 && scratch.Length < RowBytes) scratch = new byte[RowBytes];
        Prediction.Undo(samples, BitDepth, scratch);
    }

    protected override void SkipNext(int first, int count)
    {
        if (scratch.Length < RowBytes) scratch = new byte[RowBytes];
        for (var i = 0; i < count; i++) Inflate(scratch.AsSpan(0, RowBytes));
    }

    private void Inflate(Span<byte> row)
    {
        try
        {
            inflater ??= Zlib.OpenInflater(new BufferedStream(new ByteSourceStream(data, opened), 1 << 16));
            if (StreamReading.TryFill(inflater, row))
            {
                if (++inflatedRows == Height && inflater.ReadByte() >= 0) throw place.Damaged(0, "The ZIP data unpacks to more than the rectangle holds.");
                return;
            }
        }
        catch (Exception error) when (Zlib.IsDamage(error))
        {
            throw place.Damaged(0, FormattableString.Invariant($"The ZIP data is damaged at row {NextRow}."), error);
        }

        throw place.Damaged(data.Length, FormattableString.Invariant($"The ZIP data ends at row {NextRow} of {Height}."));
    }
}
