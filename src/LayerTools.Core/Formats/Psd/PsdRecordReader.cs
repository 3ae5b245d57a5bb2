using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Reads layer records, and the places of their channels.</summary>
internal sealed class PsdRecordReader(PsdInput input, FileFormat format, ReadLimits limits)
{
    private const int MostChannels = 56 + 3;

    /// <summary>Rectangle, channel count, blend mode, opacity, clipping, flags, filler, length.</summary>
    private const int ShortestRecord = 34;

    /// <summary>A record and the lengths of its channels.</summary>
    private sealed record Announced(PsdRecord Record, (PlaneRole Role, long Length)[] Channels);

    /// <summary>Reads count, records and channel places to the end of the current section.</summary>
    public PsdLayerInfo Read()
    {
        var length = input.Remaining;
        var count = input.ReadInt16();
        var records = Math.Abs((int)count);
        if (records > limits.Layers) throw input.LimitExceeded($"The file has {records} layer records; the limit is {limits.Layers}.", nameof(ReadLimits.Layers));
        if (records * (long)ShortestRecord > input.Remaining) throw input.Damaged($"{records} layer records cannot fit into the {input.Remaining} bytes that are left.");
        var announced = new List<Announced>(records);
        for (var i = 0; i < records; i++)
        {
            input.Name(new PsdSection("layer record", i + 1, records));
            announced.Add(ReadRecord());
        }

        var channelsStart = input.Position;
        var read = new List<PsdRecord>(records);
        for (var i = 0; i < records; i++)
        {
            input.Name(new PsdSection("channels of layer record", i + 1, records));
            read.Add(announced[i].Record with { Planes = Array.ConvertAll(announced[i].Channels, ReadPlane) });
        }

        var channelsEnd = input.Position;
        input.Name("layers");
        return new PsdLayerInfo(read, count < 0, input.ReadSource(input.Remaining), length, channelsStart, channelsEnd);
    }

    private Announced ReadRecord()
    {
        Span<byte> rectangle = stackalloc byte[16];
        input.Read(rectangle);
        var bounds = PsdMaskData.ReadBounds(rectangle);
        CheckBounds(bounds, "layer");
        var channelCount = input.ReadUInt16();
        if (channelCount > MostChannels) throw input.Damaged($"{channelCount} channels are more than the format's {MostChannels} for a layer.");
        var channels = new (PlaneRole Role, long Length)[channelCount];
        for (var i = 0; i < channelCount; i++) channels[i] = ((PlaneRole)input.ReadInt16(), input.ReadLength(format == FileFormat.Psb));
        var record = new PsdRecord
        {
            Bounds = bounds,
            BlendSignature = input.ReadUInt32(),
            BlendKey = input.ReadUInt32(),
            Opacity = input.ReadByte(),
            Clipping = input.ReadByte(),
            Flags = input.ReadByte(),
            Filler = input.ReadByte(),
        };
        if (record.BlendSignature != PsdKey.Signature) throw input.Damaged($"The signature before the blend mode is '{PsdKey.Format(record.BlendSignature)}' instead of '8BIM'.");
        var outer = input.Enter(input.ReadUInt32(), input.Section);
        var mask = ReadPart("mask data");
        PsdMaskData.Load(mask, Array.Exists(channels, channel => channel.Role == PlaneRole.PaintedMask), out var parsed);
        if (parsed is not null)
        {
            CheckBounds(parsed.Bounds, "mask");
            CheckBounds(parsed.PaintedBounds ?? Bounds.Empty, "painted mask");
        }

        var ranges = ReadPart("blending ranges");
        var name = input.ReadBytes(input.ReadByte());
        var namePadding = input.ReadBytes(Math.Min((4 - ((name.Length + 1) & 3)) & 3, input.Remaining));
        record = record with
        {
            MaskData = mask,
            BlendingRanges = ranges,
            LegacyName = name,
            LegacyNamePadding = namePadding,
            Blocks = PsdBlock.ReadAll(input, format),
            Tail = input.ReadSource(input.Remaining),
        };
        input.Leave(outer);
        return new Announced(record, channels);
    }

    /// <summary>A part of the record that is a few dozen bytes long unless the file is damaged.</summary>
    private byte[] ReadPart(string part)
    {
        const int Longest = 1 << 16;
        var length = input.ReadUInt32();
        return length <= Longest ? input.ReadBytes(length) : throw input.Damaged($"The {part} take {length} bytes; {Longest} is far more than they can need.");
    }

    private Plane ReadPlane((PlaneRole Role, long Length) channel)
    {
        if (channel.Length == 0) return new Plane(channel.Role, Plane.NoCompressionWord, MemoryBytes.Empty);
        input.CheckLength(channel.Length, input.Section);
        if (channel.Length == 1) throw input.Damaged("A channel of 1 byte cannot hold its compression word.");
        var stored = new FileSlice(input.Source, input.Position, channel.Length);
        input.Skip(channel.Length);
        return new Plane(channel.Role, stored);
    }

    private void CheckBounds(Bounds bounds, string what)
    {
        var (width, height) = ((long)bounds.Right - bounds.Left, (long)bounds.Bottom - bounds.Top);
        // Writers of empty layers are known to leave 0 x -1 px; nothing is lost in it.
        if ((width < 0 && height != 0) || (height < 0 && width != 0)) throw input.Damaged($"The {what}'s rectangle has a negative size, {width} x {height} px.");
        if (width > CanvasLimits.LongestRectangleSide || height > CanvasLimits.LongestRectangleSide) throw input.Damaged($"The {what}'s rectangle, {width} x {height} px, is larger than any canvas.");
        if (!CanvasLimits.IsInReach(bounds)) throw input.Damaged($"The {what}'s rectangle begins impossibly far from the canvas.");
    }
}
