namespace LayerTools.Pixels.Png;

/// <summary>The checksum of PNG chunks (ISO/IEC 15948, annex D).</summary>
internal static class Crc32
{
    public const uint Start = uint.MaxValue;

    private const uint Polynomial = 0xEDB88320;
    private static readonly uint[] Table = CreateTable();

    /// <summary>Goes on with a checksum that began with <see cref="Start"/>; its complement is what is written.</summary>
    public static uint Add(uint checksum, ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes) checksum = Table[(checksum ^ value) & 0xFF] ^ (checksum >> 8);
        return checksum;
    }

    private static uint[] CreateTable()
    {
        var table = new uint[256];
        for (var i = 0u; i < table.Length; i++)
        {
            var value = i;
            for (var bit = 0; bit < 8; bit++) value = (value & 1) != 0 ? Polynomial ^ (value >> 1) : value >> 1;
            table[i] = value;
        }

        return table;
    }
}
