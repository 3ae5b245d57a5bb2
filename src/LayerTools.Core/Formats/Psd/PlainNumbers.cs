using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Scales numbers of 8 bytes at known places of blocks. Each method changes the bytes and tells whether they were as expected.</summary>
internal static class PlainNumbers
{
    private const int NumberBytes = 8;

    /// <summary>Text: version 2, then xx, xy, yx, yy, tx, ty: x and y of where each unit of the text goes on the canvas (PSD File Formats Specification, 'Type tool object setting').</summary>
    public static bool ScaleTransform(byte[] data, CanvasScale scale) => ScalePairs(data, 2, 3, scale);

    /// <summary>Placed content of old files: 'plcL', version 4, id (length 1, text), page 4, pages 4, smoothing 4, kind 4, then four corners (same source, 'Placed Layer').</summary>
    public static bool ScaleCorners(byte[] data, CanvasScale scale)
    {
        const int IdStart = 8;
        const int AfterId = 16;
        return data.Length > IdStart && ScalePairs(data, IdStart + 1 + data[IdStart] + AfterId, 4, scale);
    }

    /// <summary>A reference point: x, y.</summary>
    public static bool ScalePoint(byte[] data, CanvasScale scale) => ScalePairs(data, 0, 1, scale);

    private static bool ScalePairs(byte[] data, int start, int pairs, CanvasScale scale)
    {
        if (data.Length < start + (2 * pairs * NumberBytes)) return false;
        for (var i = 0; i < 2 * pairs; i++) DescriptorScaler.Multiply(data, start + (i * NumberBytes), i % 2 == 0 ? scale.Across : scale.Down);
        return true;
    }
}
