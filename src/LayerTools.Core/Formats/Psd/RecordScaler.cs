using LayerTools.Errors;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>
/// Tells a layer's blocks in the pixels of a canvas of another size: effects, strokes, patterns, frames of text and placed content, sheets, reference points. Paths are told in
/// fractions of the canvas and need no change.
/// </summary>
internal static class RecordScaler
{
    private const long Largest = 1 << 24;

    /// <summary>The parameters of a live shape, which would contradict its path.</summary>
    private const string LiveShape = "vogk";

    /// <summary>Where the descriptor with sizes in pixels begins, by the block's key. vscg names the kind of fill first, effects have a version.</summary>
    private static readonly (string Key, int Start)[] SizedBlocks = [("lfx2", 4), ("lmfx", 4), ("lfxs", 4), ("vscg", 4), ("vstk", 0), ("PtFl", 0), ("GdFl", 0)];

    /// <summary>A record for the new canvas.</summary>
    /// <param name="record">The record.</param>
    /// <param name="scale">The change.</param>
    /// <param name="notes">Gets what keeps its size, in words that follow the layer's path.</param>
    public static PsdRecord Scale(PsdRecord record, CanvasScale scale, ICollection<string> notes)
    {
        using var opened = new OpenedSources();
        var blocks = record.Blocks.Where(block => block.Key != PsdKey.Parse(LiveShape)).Select(block => Scale(block, scale, opened, notes)).ToList();
        return blocks.SequenceEqual(record.Blocks) ? record : record with { Blocks = blocks };
    }

    private static PsdBlock Scale(PsdBlock block, CanvasScale scale, OpenedSources opened, ICollection<string> notes)
    {
        foreach (var (key, start) in SizedBlocks)
        {
            if (block.Key == PsdKey.Parse(key)) return Map(block, opened, notes, Name(key), data => new DescriptorScaler(scale).ScaleSizes(data, start, $"block '{key}'"));
        }

        foreach (var key in ArtboardDescriptors.Keys)
        {
            if (block.Key == PsdKey.Parse(key) && block.Data is MemoryBytes sheet) return block with { Data = new MemoryBytes(ArtboardDescriptors.Map(sheet.Bytes, bounds => Round(bounds, scale))) };
        }

        // type 4 and version 4 come before the descriptor
        const int PlacedStart = 8;
        const string Placed = "its placed content";
        if (block.Key == PsdKey.Parse("SoLd") || block.Key == PsdKey.Parse("SoLE")) return Map(block, opened, notes, Placed, data => new DescriptorScaler(scale).ScaleCorners(data, PlacedStart, "placed content"));
        if (block.Key == PsdKey.Parse("PlLd") || block.Key == PsdKey.Parse("plLd")) return Map(block, opened, notes, Placed, data => PlainNumbers.ScaleCorners(data, scale));
        if (block.Key == PsdKey.Parse("TySh") || block.Key == PsdKey.Parse("tySh")) return Map(block, opened, notes, "its text", data => PlainNumbers.ScaleTransform(data, scale));
        if (block.Key == PsdKey.Parse("fxrp")) return Map(block, opened, notes, "its reference point", data => PlainNumbers.ScalePoint(data, scale));
        return block.Key == PsdKey.Parse(OldEffects.Key) ? Map(block, opened, notes, Name("lfx2"), data => OldEffects.Scale(data, scale.Mean)) : block;
    }

    private static PsdBlock Map(PsdBlock block, OpenedSources opened, ICollection<string> notes, string name, Func<byte[], bool> scale)
    {
        var isDone = false;
        var data = block.Data.Length <= Largest ? (byte[])block.Data.ReadAll(opened).Clone() : [];
        try
        {
            isDone = data.Length > 0 && scale(data);
        }
        catch (LayeredFileException error) when (error.Kind is LayeredFileErrorKind.Damaged or LayeredFileErrorKind.LimitExceeded)
        {
            // What cannot be read keeps its size, as the note says; the layer's pixels do not depend on it.
        }

        if (!isDone) notes.Add(name);
        return data.Length > 0 ? block with { Data = new MemoryBytes(data) } : block;
    }

    private static string Name(string key) => key is "lfx2" or "lmfx" or "lfxs" ? "its effects" : "its fill or stroke";

    private static Bounds Round(Bounds sheet, CanvasScale scale) => new(
        (int)Math.Round(scale.MapX(sheet.Left)), (int)Math.Round(scale.MapY(sheet.Top)), (int)Math.Round(scale.MapX(sheet.Right)), (int)Math.Round(scale.MapY(sheet.Bottom)));
}
