using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Formats.Psd;

/// <summary>The stored merged picture as it lies on the canvas that the file has now; what was never there is white, or transparent.</summary>
internal sealed class PlacedPicture
{
    private readonly LayerFile file;
    private readonly PsdFileDetail detail;
    private readonly StoredPicture stored;
    private readonly CanvasPlacement placement;

    /// <exception cref="LayeredFileException">The picture is packed in a way that cannot be read here.</exception>
    public PlacedPicture(LayerFile file, PsdFileDetail detail, OpenedSources opened)
    {
        this.file = file;
        this.detail = detail;
        stored = new StoredPicture(detail, opened, file.Path);
        placement = new CanvasPlacement(detail.Header.Width, detail.Header.Height, file.Width, file.Height, detail.CanvasShift.Right, detail.CanvasShift.Down, detail.Header.Depth);
    }

    public Compression Compression => stored.Compression;

    /// <summary>Opens a channel whose rows are then read from the top.</summary>
    public Channel OpenChannel(int index) => new(this, index);

    private byte GetEmptySample(int channel) => file.ColorMode switch
    {
        ColorMode.Bitmap or ColorMode.Indexed => 0,
        ColorMode.Lab when channel is 1 or 2 => 0x80,
        ColorMode.Grayscale or ColorMode.Duotone => (byte)(channel < 1 ? 255 : 0),
        ColorMode.Cmyk => (byte)(channel < 4 ? 255 : 0),
        ColorMode.Multichannel => 255,
        _ => (byte)(channel < 3 ? 255 : 0),
    };

    /// <summary>The rows of one channel, as many as the canvas has.</summary>
    internal sealed class Channel(PlacedPicture picture, int index)
    {
        private readonly StoredPicture.Channel rows = picture.stored.OpenChannel(index);
        private readonly byte[] source = new byte[picture.stored.RowBytes];
        private readonly byte empty = picture.GetEmptySample(index);
        private int read;
        private int y;

        public void ReadRow(Span<byte> target)
        {
            var sourceRow = y++ - picture.placement.Down;
            picture.placement.Fill(target, empty);
            if (sourceRow < 0 || sourceRow >= picture.detail.Header.Height) return;
            for (; read <= sourceRow; read++) rows.ReadRow(source);
            picture.placement.Place(source, target);
        }
    }
}
