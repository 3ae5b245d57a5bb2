using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Reads a PSD or PSB file: everything but pixels, which stay on disk and are known by their place.</summary>
internal sealed class PsdReader
{
    private static readonly uint[] LayerBlockKeys = [PsdKey.Parse("Lr16"), PsdKey.Parse("Lr32"), PsdKey.Parse("Layr")];

    private readonly PsdInput input;
    private readonly ReadLimits limits;
    private readonly PsdHeader header;

    private PsdReader(PsdInput input, ReadLimits limits)
    {
        this.input = input;
        this.limits = limits;
        header = PsdHeader.Read(input);
    }

    public static LayerFile Read(string path, ReadLimits limits)
    {
        using var input = new PsdInput(path);
        try
        {
            return new PsdReader(input, limits).ReadFile();
        }
        catch (Exception error) when (FileAccessErrors.TryDescribe(error, path) is { } described)
        {
            throw described;
        }
    }

    private LayerFile ReadFile()
    {
        var detail = new PsdFileDetail { Header = header, MergedPicture = MemoryBytes.Empty };
        ReadColorData(detail);
        ReadResources(detail);
        ReadLayerSection(detail);
        var mergedStart = input.Position;
        CheckMergedPicture();
        detail.MergedPicture = new FileSlice(input.Source, mergedStart, input.Length - mergedStart);
        input.Remember(ListWatchedRanges(detail, mergedStart));
        return PsdModelLoader.Load(input.Source, detail, limits);
    }

    private void ReadColorData(PsdFileDetail detail)
    {
        input.Name("colour mode data");
        var outer = input.Enter(input.ReadUInt32(), "colour mode data");
        detail.ColorData = input.ReadSource(input.Remaining);
        input.Leave(outer);
    }

    private void ReadResources(PsdFileDetail detail)
    {
        // signature 4, id 2, name at least 2, length 4
        const int ShortestResource = 12;
        input.Name("image resources");
        var outer = input.Enter(input.ReadUInt32(), "image resources");
        while (input.Remaining >= ShortestResource) detail.Resources.Add(PsdResource.Read(input));
        detail.ResourcesTail = input.ReadSource(input.Remaining);
        input.Leave(outer);
    }

    private void ReadLayerSection(PsdFileDetail detail)
    {
        input.Name("layers and masks");
        var length = input.ReadLength(header.IsPsb);
        detail.HasLayerSection = length > 0;
        if (length == 0) return;
        var outer = input.Enter(length, "layers and masks");
        ReadLayerInfo(detail, input.ReadLength(header.IsPsb));
        detail.GlobalMask = null;
        if (input.Remaining >= 4)
        {
            input.Name("global layer mask");
            var maskLength = input.ReadUInt32();
            input.CheckLength(maskLength, "global layer mask");
            detail.GlobalMask = input.ReadSource(maskLength);
        }

        input.Name("additional information");
        ReadGlobalBlocks(detail);
        detail.BlocksTail = input.ReadSource(input.Remaining);
        input.Leave(outer);
    }

    private void ReadLayerInfo(PsdFileDetail detail, long length)
    {
        if (length == 0) return;
        var outer = input.Enter(length, "layer info");
        detail.LayerInfo = new PsdRecordReader(input, header.Format, limits).Read();
        input.Leave(outer);
    }

    /// <summary>Reads the blocks after the layers; those of 16 and 32 bit files hold the layers themselves.</summary>
    private void ReadGlobalBlocks(PsdFileDetail detail)
    {
        while (PsdBlock.IsNext(input) && PsdBlock.TryReadHeader(input, header.Format) is { } block)
        {
            ByteSource data = MemoryBytes.Empty;
            if (detail.LayerInfo is null && block.Length > 0 && LayerBlockKeys.Contains(block.Key))
            {
                ReadLayerInfo(detail, block.Length);
                detail.LayerBlockIndex = detail.Blocks.Count;
            }
            else
            {
                data = input.ReadSource(block.Length);
            }

            detail.Blocks.Add(new PsdBlock(block.Signature, block.Key, data, PsdBlock.ReadPadding(input, block.Length)));
        }
    }

    /// <summary>Makes sure that the merged picture is all there, as far as that can be told without unpacking it.</summary>
    private void CheckMergedPicture()
    {
        input.Name("merged picture");
        var place = input.Position;
        var compression = input.ReadUInt16();
        var rows = (long)header.Channels * header.Height;
        if (compression == (int)Pixels.Compression.Raw)
        {
            input.CheckLength(rows * (((long)header.Width * header.Depth + 7) / 8), "merged picture");
        }
        else if (compression == (int)Pixels.Compression.PackBits)
        {
            input.CheckLength(SumRowLengths(rows), "merged picture");
        }

        input.Skip(place - input.Position);
    }

    private long SumRowLengths(long rows)
    {
        var size = header.IsPsb ? 4 : 2;
        input.CheckLength(rows * size, "merged picture");
        Span<byte> chunk = stackalloc byte[4096];
        var sum = 0L;
        for (var left = rows; left > 0;)
        {
            var count = (int)Math.Min(left, chunk.Length / size);
            var lengths = chunk.Slice(0, count * size);
            input.Read(lengths);
            for (var i = 0; i < lengths.Length; i += size)
            {
                sum += size == 4 ? BinaryPrimitives.ReadUInt32BigEndian(lengths.Slice(i)) : BinaryPrimitives.ReadUInt16BigEndian(lengths.Slice(i));
            }

            left -= count;
        }

        return sum;
    }

    /// <summary>All that is not pixels, less what is so large that reading it again each time would cost too much.</summary>
    private static List<(long Offset, long Length)> ListWatchedRanges(PsdFileDetail detail, long mergedStart)
    {
        const long TooLarge = 1 << 20;
        var skipped = detail.Resources.Select(resource => resource.Data)
            .Concat(detail.Blocks.Select(block => block.Data))
            .Concat(detail.LayerInfo?.Records.SelectMany(record => record.Blocks.Select(block => block.Data)) ?? [])
            .OfType<FileSlice>()
            .Where(slice => slice.Length > TooLarge)
            .Select(slice => (slice.Offset, slice.Length));
        if (detail.LayerInfo is { } info) skipped = skipped.Append((info.ChannelsStart, info.ChannelsEnd - info.ChannelsStart));
        var watched = new List<(long Offset, long Length)>();
        var position = 0L;
        foreach (var (offset, length) in skipped.OrderBy(range => range.Item1))
        {
            watched.Add((position, offset - position));
            position = offset + length;
        }

        watched.Add((position, mergedStart - position));
        return watched;
    }
}
