using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Writes the model of a PSD or PSB file.</summary>
internal sealed class PsdWriter
{
    private const int MostRecords = short.MaxValue;
    private readonly LayerFile file;
    private readonly PsdFileDetail detail;
    private readonly PsdEncoding encoding;
    private readonly PsdRecordBuilder builder;

    private PsdWriter(LayerFile file, PsdEncoding encoding)
    {
        this.file = file;
        this.encoding = encoding;
        detail = (PsdFileDetail)file.Detail;
        builder = new PsdRecordBuilder(detail.Habits, encoding);
    }

    private bool IsPsb => file.Format == FileFormat.Psb;

    /// <summary>Lays the file out; nothing is written yet.</summary>
    /// <param name="file">The file.</param>
    /// <param name="picture">What the file shows: merged picture, thumbnail and whether the picture is real.</param>
    /// <param name="encoding">How much is encoded anew.</param>
    public static PsdOutput Layout(LayerFile file, PsdPicture picture, PsdEncoding encoding)
    {
        var output = new PsdWriter(file, encoding).LayOutFile(picture);
        if (file.Format == FileFormat.Psd && output.Length > uint.MaxValue)
        {
            throw new LayeredFileException(LayeredFileErrorKind.NotSupported, file.Path, "whole file", -1, "The file would be larger than 4 GB, which the PSD format cannot hold.", "Save it as PSB where it was made.");
        }

        return output;
    }

    private PsdOutput LayOutFile(PsdPicture picture)
    {
        var output = new PsdOutput();
        (detail.Header with { Width = file.Width, Height = file.Height }).Write(output);
        output.WriteUInt32(checked((uint)detail.ColorData.Length));
        output.Write(detail.ColorData);
        WriteSection(output, wide: false, LayOutResources(picture));
        var layers = LayOutLayerSection();
        WriteSection(output, IsPsb, layers);
        foreach (var part in picture.Merged) output.Write(part);
        return output;
    }

    private static void WriteSection(PsdOutput output, bool wide, PsdOutput content)
    {
        output.WriteLength(content.Length, wide);
        output.Write(content);
    }

    private PsdOutput LayOutResources(PsdPicture picture)
    {
        var output = new PsdOutput();
        var missing = new Dictionary<ushort, byte[]>();
        if (IsStale(file.Ppi, PsdResolution.Read(detail)) && file.Ppi is { } ppi) missing[PsdResource.Resolution] = PsdResolution.Write(ppi, GetStored(PsdResource.Resolution));
        if (IsStale(file.Guides, PsdGuides.Read(detail))) missing[PsdResource.Guides] = PsdGuides.Write(file.Guides, GetStored(PsdResource.Guides));
        foreach (var (id, data) in picture.Resources) missing[id] = data;
        foreach (var resource in detail.Resources)
        {
            // Of two resources with one id, the first is the one that counts.
            var isReplaced = missing.TryGetValue(resource.Id, out var data) && missing.Remove(resource.Id);
            (isReplaced ? resource.With(data!) : resource).Write(output);
        }

        foreach (var added in missing) new PsdResource(added.Key, added.Value).Write(output);
        output.Write(detail.ResourcesTail);
        return output;
    }

    private bool IsStale<T>(T model, T stored) => encoding == PsdEncoding.EncodeEverything
        ? stored is System.Collections.ICollection { Count: > 0 } or double
        : model is IReadOnlyList<Guide> guides ? !guides.SequenceEqual((IReadOnlyList<Guide>)stored!) : !Equals(model, stored);

    private byte[] GetStored(ushort id) => detail.Find(id)?.Data is MemoryBytes memory ? memory.Bytes : [];

    private PsdOutput LayOutLayerSection()
    {
        var output = new PsdOutput();
        var info = LayOutLayerInfo();
        if (!detail.HasLayerSection && info is null) return output;
        var blockIndex = detail.LayerBlockIndex ?? (info is not null && detail.LayerInfo is null && file.BitDepth > 8 ? detail.Blocks.Count : null);
        if (blockIndex is null && info is not null) WriteSection(output, IsPsb, info);
        else output.WriteLength(0, IsPsb);
        if (detail.GlobalMask is { } mask)
        {
            output.WriteUInt32(checked((uint)mask.Length));
            output.Write(mask);
        }

        for (var i = 0; i < detail.Blocks.Count; i++)
        {
            if (i == blockIndex) WriteLayerBlock(output, detail.Blocks[i], info!);
            else WriteBlock(output, detail.Blocks[i]);
        }

        if (blockIndex == detail.Blocks.Count) WriteLayerBlock(output, new PsdBlock(file.BitDepth == 16 ? "Lr16" : "Lr32", []), info!);
        output.Write(detail.BlocksTail);
        return output;
    }

    private void WriteBlock(PsdOutput output, PsdBlock block)
    {
        block.WriteHeader(output, file.Format, block.Data.Length);
        output.Write(block.Data);
        output.Write(block.Padding);
    }

    private void WriteLayerBlock(PsdOutput output, PsdBlock block, PsdOutput info)
    {
        block.WriteHeader(output, file.Format, info.Length);
        output.Write(info);
        var isPadded = block.Padding.Length > 0 || detail.LayerInfo is not { } stored || stored.StoredLength % 4 == 0;
        if (isPadded) output.WriteZeros((int)((4 - (info.Length & 3)) & 3));
    }

    /// <summary>Count, records, channels and filling; null for a file that has no layers and no place for them.</summary>
    private PsdOutput? LayOutLayerInfo()
    {
        var records = ListRecords();
        if (records.Count == 0 && detail.LayerInfo is null) return null;
        if (records.Count > MostRecords)
        {
            throw new LayeredFileException(LayeredFileErrorKind.NotSupported, file.Path, "layer info", -1, $"{records.Count} layer records are more than the format's {MostRecords}.", "Remove layers, or split the file.");
        }

        var output = new PsdOutput();
        output.WriteInt16((short)(detail.LayerInfo is { FirstAlphaIsTransparency: true } ? -records.Count : records.Count));
        foreach (var record in records) record.Write(output, file.Format);
        foreach (var plane in records.SelectMany(record => record.Planes)) output.Write(plane);
        WriteFilling(output);
        return output;
    }

    /// <summary>Fills up to the multiple of 4 or 2 that the file uses, or repeats what no such rule explains.</summary>
    private void WriteFilling(PsdOutput output)
    {
        if (detail.LayerInfo is not { } info)
        {
            output.WriteZeros((int)((4 - (output.Length & 3)) & 3));
            return;
        }

        var stored = info.StoredLength;
        var alignment = stored % 4 == 0 ? 4 : stored % 2 == 0 ? 2 : 1;
        var isFilling = info.Tail is MemoryBytes { Bytes: var tail } && tail.Length < alignment && Array.TrueForAll(tail, value => value == 0);
        if (isFilling) output.WriteZeros((int)((alignment - output.Length % alignment) % alignment));
        else output.Write(info.Tail);
    }

    /// <summary>The flat list, back to front.</summary>
    private List<PsdRecord> ListRecords()
    {
        var frontToBack = new List<PsdRecord>(detail.StraysInFront);
        AddRecords(file.Root, isLast: true, frontToBack);
        frontToBack.Reverse();
        return frontToBack;
    }

    /// <param name="group">The group whose layers are added.</param>
    /// <param name="isLast">Whether nothing follows the group, not even the end of a group around it.</param>
    /// <param name="frontToBack">Gets the records.</param>
    private void AddRecords(Layer group, bool isLast, List<PsdRecord> frontToBack)
    {
        var children = group.GetChildren();
        for (var i = 0; i < children.Count; i++)
        {
            var layer = children[i];
            var layerDetail = (PsdLayerDetail)layer.Detail;
            var isOpenToTheEnd = isLast && i == children.Count - 1 && layerDetail.Closing is null;
            frontToBack.Add(builder.Build(layer));
            AddRecords(layer, isOpenToTheEnd, frontToBack);
            if (layer.IsGroup && !isOpenToTheEnd) frontToBack.Add(layerDetail.Closing ?? CreateClosing());
            // Between layers of a group a stray end would end that group.
            if (group.IsRoot) frontToBack.AddRange(new[] { layer }.Concat(layer.GetLayers()).SelectMany(inside => ((PsdLayerDetail)inside.Detail).StraysBehind));
        }
    }

    /// <summary>The end of a group that was never ended, once an edit put something behind it.</summary>
    private PsdRecord CreateClosing() => ((PsdLayerDetail)detail.CreateLayerDetail(LayerKind.Group)).Closing!;
}
