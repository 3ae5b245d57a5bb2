using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Formats.Psd;

/// <summary>
/// Makes the parts of a file around its layers into those of a file of RGB with 8 bits: another header, layers in the usual place instead of a block of their own
/// (Lr16, Lr32), no palette, no profile of other colours, and no channels beside colours and transparency.
/// </summary>
internal static class EightBitRgb
{
    private const int ColorCount = 3;

    /// <summary>Blocks that hold layers, or say that transparency is stored, for a depth of more than 8 bits.</summary>
    private static readonly HashSet<uint> DeepBlocks = [.. new[] { "Lr16", "Lr32", "Layr", "Mt16", "Mt32", "Mtrn", "Alph" }.Select(PsdKey.Parse)];

    /// <summary>
    /// Resources about channels beside the colours (1006, 1007, 1045, 1053, 1067, 1077), inks (1018), palettes (1046, 1047) and tone mapping (1070).
    /// (PSD File Formats Specification, 'Image Resource IDs'.)
    /// </summary>
    private static readonly HashSet<ushort> ColorResources = [1006, 1007, 1018, 1045, 1046, PsdResource.TransparentIndex, 1053, 1067, 1070, 1077];

    public static PsdFileDetail Convert(LayerFile file, PsdFileDetail detail, bool keepsPicture, SpoolFile spool)
    {
        var hasTransparency = detail.LayerInfo is { FirstAlphaIsTransparency: true };
        var header = detail.Header with { Depth = 8, Mode = (int)ColorMode.Rgb, Channels = ColorCount + (hasTransparency ? 1 : 0) };
        // At 32 bits a profile says how linear light looks; the samples are encoded as sRGB from now on.
        var keepsProfile = file is { ColorMode: ColorMode.Rgb, BitDepth: < 32 };
        return new PsdFileDetail
        {
            Header = header,
            Resources = [.. detail.Resources.Where(resource => !ColorResources.Contains(resource.Id) && (keepsProfile || resource.Id != PsdResource.ColorProfile))],
            ResourcesTail = detail.ResourcesTail,
            LayerInfo = detail.LayerInfo is null ? null : new PsdLayerInfo([], hasTransparency, MemoryBytes.Empty, StoredLength: 4, ChannelsStart: 0, ChannelsEnd: 0),
            GlobalMask = detail.GlobalMask,
            Blocks = [.. detail.Blocks.Where(block => !DeepBlocks.Contains(block.Key))],
            BlocksTail = detail.BlocksTail,
            StraysInFront = detail.StraysInFront,
            MergedPicture = new JoinedBytes(keepsPicture ? WritePicture(file, header, spool) : WriteWhite(header, spool)),
            Habits = detail.Habits,
            Closings = detail.Closings,
        };
    }

    private static IReadOnlyList<ByteSource> WriteWhite(PsdHeader header, SpoolFile spool)
    {
        var row = new byte[header.Width];
        row.AsSpan().Fill(byte.MaxValue);
        using var writer = new PictureWriter(header, Compression.PackBits, spool);
        for (var channel = 0; channel < header.Channels; channel++)
        {
            for (var y = 0; y < header.Height; y++) writer.WriteRow(channel, row);
        }

        return writer.Complete();
    }

    private static IReadOnlyList<ByteSource> WritePicture(LayerFile file, PsdHeader header, SpoolFile spool)
    {
        var raster = StoredRaster.Read(file);
        var row = new byte[header.Width];
        using var writer = new PictureWriter(header, Compression.PackBits, spool);
        for (var y = 0; y < header.Height; y++)
        {
            var pixels = raster.Row(y);
            for (var channel = 0; channel < header.Channels; channel++)
            {
                for (var x = 0; x < row.Length; x++)
                {
                    var (value, alpha) = (pixels[(4 * x) + channel], pixels[(4 * x) + ColorCount]);
                    // The colours of a merged picture lie on white.
                    row[x] = channel == ColorCount ? value : (byte)(((value * alpha) + (byte.MaxValue * (byte.MaxValue - alpha)) + 127) / byte.MaxValue);
                }

                writer.WriteRow(channel, row);
            }
        }

        return writer.Complete();
    }
}
