using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>The paths of a vector mask: version 4, flags 4, then path records (PSD File Formats Specification, 'Vector mask setting').</summary>
internal static class VectorMaskBlock
{
    public static readonly string[] Keys = ["vmsk", "vsms"];
    private static readonly uint[] ParsedKeys = [.. Keys.Select(PsdKey.Parse)];
    private const int RecordsStart = 8;
    private const int Inverted = 1;
    private const int Disabled = 4;

    /// <summary>The path of the first block that has one; null if there is none.</summary>
    public static VectorPath? Find(PsdRecord record)
    {
        foreach (var key in Keys)
        {
            if (record.GetData(key) is { Length: >= RecordsStart } data) return Read(data);
        }

        return null;
    }

    public static bool IsKey(uint key) => Array.IndexOf(ParsedKeys, key) >= 0;

    public static bool IsDisabled(ReadOnlySpan<byte> data) => data.Length >= RecordsStart && (BinaryPrimitives.ReadInt32BigEndian(data.Slice(4)) & Disabled) != 0;

    private static VectorPath Read(ReadOnlySpan<byte> data)
    {
        var outlines = PathRecords.ReadOutlines(data, RecordsStart, out var isFilledWhenEmpty);
        var flags = BinaryPrimitives.ReadInt32BigEndian(data.Slice(4));
        return new VectorPath(outlines, isFilledWhenEmpty, (flags & Inverted) != 0, (flags & Disabled) != 0);
    }

    public static byte[] Reflect(ReadOnlySpan<byte> data, int doubledAxis, int canvasWidth) => PathRecords.Reflect(data, RecordsStart, doubledAxis, canvasWidth);

    public static byte[] Recanvas(ReadOnlySpan<byte> data, int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight) =>
        PathRecords.Recanvas(data, RecordsStart, right, down, oldWidth, oldHeight, newWidth, newHeight);
}
