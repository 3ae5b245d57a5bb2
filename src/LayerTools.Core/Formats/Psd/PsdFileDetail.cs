using System.Buffers.Binary;
using LayerTools.Formats.Psd.Blocks;
using LayerTools.Formats.Psd.Patterns;
using LayerTools.Model;
using LayerTools.Model.Fills;
using LayerTools.Pixels;

namespace LayerTools.Formats.Psd;

/// <summary>The parts of a PSD or PSB file around its layers, kept as they are.</summary>
internal sealed class PsdFileDetail : FileDetail
{
    public required PsdHeader Header { get; set; }

    /// <summary>The content of the colour mode data section: a palette, or the inks of a duotone.</summary>
    public ByteSource ColorData { get; set; } = MemoryBytes.Empty;

    public List<PsdResource> Resources { get; set; } = [];

    /// <summary>Bytes after the last resource that are none.</summary>
    public ByteSource ResourcesTail { get; set; } = MemoryBytes.Empty;

    /// <summary>Whether the section for layers and masks has any content.</summary>
    public bool HasLayerSection { get; set; } = true;

    public PsdLayerInfo? LayerInfo { get; set; }

    /// <summary>Which global block holds the layers, as files of 16 and 32 bit have it; null for the usual place.</summary>
    public int? LayerBlockIndex { get; set; }

    /// <summary>The global layer mask info with its length; null where the section ends before.</summary>
    public ByteSource? GlobalMask { get; set; } = MemoryBytes.Empty;

    public List<PsdBlock> Blocks { get; set; } = [];

    public ByteSource BlocksTail { get; set; } = MemoryBytes.Empty;

    /// <summary>Group ends in front of all layers.</summary>
    public IReadOnlyList<PsdRecord> StraysInFront { get; set; } = [];

    /// <summary>The merged picture with its compression word, to the end of the file.</summary>
    public required ByteSource MergedPicture { get; set; }

    public PsdHabits Habits { get; set; } = PsdHabits.OfNewFile;

    public override IEnumerable<int> HiddenIds => Closings.Select(record => LayerIdBlock.Read(record.GetData("lyid"))).OfType<int>();

    public override ByteSource? Palette => Header.Mode == (int)ColorMode.Indexed ? ColorData : null;

    public override int? TransparentIndex => Find(PsdResource.TransparentIndex)?.Data is MemoryBytes { Bytes: { Length: >= 2 } bytes } ? BinaryPrimitives.ReadUInt16BigEndian(bytes) : null;

    public override int ExtraChannelCount
    {
        get
        {
            var colors = (ColorMode)Header.Mode switch { ColorMode.Rgb or ColorMode.Lab => 3, ColorMode.Cmyk => 4, ColorMode.Multichannel => Header.Channels, _ => 1 };
            return Math.Max(0, Header.Channels - colors - (LayerInfo is { FirstAlphaIsTransparency: true } ? 1 : 0));
        }
    }

    public override ByteSource? ColorProfile => Find(PsdResource.ColorProfile)?.Data;

    public IReadOnlyList<PsdRecord> Closings { get; set; } = [];

    /// <summary>Whether the merged picture shows the layers, as far as the file says (resource 1057: version 4, then one byte).</summary>
    public bool HasRealPicture => Find(PsdResource.Version)?.Data is not MemoryBytes { Bytes: { Length: > 4 } bytes } || bytes[4] != 0;

    /// <summary>How far the canvas's content has moved since it was stored, px.</summary>
    public (int Right, int Down) CanvasShift { get; private set; }

    /// <summary>Whether the stored merged picture lies otherwise than the canvas.</summary>
    public bool HasMovedCanvas(LayerFile file) => CanvasShift != (0, 0) || (file.Width, file.Height) != (Header.Width, Header.Height);

    /// <summary>The angle of the light that effects share, degrees. Files without it mean 30 (PSD File Formats Specification, 'Image Resource IDs').</summary>
    public double LightAngle => Find(PsdResource.LightAngle)?.Data is MemoryBytes { Bytes.Length: >= 4 } data ? BinaryPrimitives.ReadInt32BigEndian(data.Bytes) : 30;

    public override Pattern? FindPattern(string id) => PatternBlocks.Find(Blocks, id);

    public override void Recanvas(int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight)
    {
        CanvasShift = (CanvasShift.Right + right, CanvasShift.Down + down);
        for (var i = 0; i < Resources.Count; i++)
        {
            if (PsdResource.IsPath(Resources[i].Id) && Resources[i].Data is MemoryBytes memory)
            {
                Resources[i] = Resources[i].With(PathRecords.Recanvas(memory.Bytes, 0, right, down, oldWidth, oldHeight, newWidth, newHeight));
            }
        }
    }

    public override FileDetail Rescale(LayerFile file, CanvasScale scale, ResampleFilter filter, SpoolFile spool, CancellationToken cancellation) => new PsdFileDetail
    {
        Header = Header with { Width = scale.NewWidth, Height = scale.NewHeight },
        ColorData = ColorData,
        // Paths are told in fractions of the canvas and need no change.
        Resources = [.. Resources.Select(resource => resource.Id == PsdResource.Slices && resource.Data is MemoryBytes memory ? resource.With(Slices.Scale(memory.Bytes, scale)) : resource)],
        ResourcesTail = ResourcesTail,
        HasLayerSection = HasLayerSection,
        LayerInfo = LayerInfo,
        LayerBlockIndex = LayerBlockIndex,
        GlobalMask = GlobalMask,
        Blocks = Blocks,
        BlocksTail = BlocksTail,
        StraysInFront = StraysInFront,
        MergedPicture = new JoinedBytes(new PictureScaler(file, this, cancellation).Scale(scale, filter, spool)),
        Habits = Habits,
        Closings = Closings,
    };

    public override FileDetail ToEightBitRgb(LayerFile file, bool keepsPicture, SpoolFile spool)
    {
        var converted = EightBitRgb.Convert(file, this, keepsPicture, spool);
        converted.CanvasShift = CanvasShift;
        return converted;
    }

    public override LayerDetail CreateLayerDetail(LayerKind kind)
    {
        if (kind != LayerKind.Group) return new PsdLayerDetail(new PsdRecord(), null);
        var passThrough = PsdKey.Parse("pass");
        var opening = new PsdRecord { Flags = PsdRecord.KnowsPixelFlag | PsdRecord.PixelsIrrelevant, Planes = EmptyPlanes(), Blocks = [new PsdBlock("lsct", DividerBlock.Write(DividerBlock.OpenGroup, passThrough))] };
        var closing = new PsdRecord
        {
            Flags = PsdRecord.KnowsPixelFlag | PsdRecord.PixelsIrrelevant,
            Planes = EmptyPlanes(),
            LegacyName = "</Group>"u8.ToArray(),
            Blocks = [new PsdBlock("lsct", DividerBlock.Write(DividerBlock.GroupEnd, null))],
        };
        return new PsdLayerDetail(opening, closing);
    }

    public PsdResource? Find(ushort id) => Resources.Find(resource => resource.Id == id);

    public void Replace(ushort id, byte[] data)
    {
        var index = Resources.FindIndex(resource => resource.Id == id);
        if (index >= 0) Resources[index] = Resources[index].With(data);
        else Resources.Add(new PsdResource(id, data));
    }

    /// <summary>The channels a layer without pixels still has.</summary>
    public IReadOnlyList<Plane> EmptyPlanes()
    {
        var colors = Header.Mode switch { (int)ColorMode.Rgb or (int)ColorMode.Lab => 3, (int)ColorMode.Cmyk => 4, _ => 1 };
        return [.. Enumerable.Range(-1, colors + 1).Select(role => new Plane((PlaneRole)role, 0, MemoryBytes.Empty))];
    }
}
