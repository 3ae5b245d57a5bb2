using System.Buffers.Binary;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>The paths of a vector mask: version 4, flags 4, then path records (PSD File Formats Specification, 'Vector mask setting').</summary>
internal static class VectorMaskBlock
{
    public static readonly string[] Keys = ["vmsk", "vsms"];
    private static readonly uint[] ParsedKeys = [.. Keys.Select(PsdKey.Parse)];
    private const int RecordsStart = 8;
    private const int Disabled = 4;

    public static bool IsKey(uint key) => Array.IndexOf(ParsedKeys, key) >= 0;

    public static bool IsDisabled(ReadOnlySpan<byte> data) => data.Length >= RecordsStart && (BinaryPrimitives.ReadInt32BigEndian(data.Slice(4)) & Disabled) != 0;

    public static byte[] Reflect(ReadOnlySpan<byte> data, int doubledAxis, int canvasWidth) => PathRecords.Reflect(data, RecordsStart, doubledAxis, canvasWidth);

    public static byte[] Recanvas(ReadOnlySpan<byte> data, int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight) =>
        PathRecords.Recanvas(data, RecordsStart, right, down, oldWidth, oldHeight, newWidth, newHeight);
}
