namespace LayerTools.Pixels.Parts;

/// <summary>Tables between sRGB-encoded bytes and amounts of light, 0 to 65,535 (IEC 61966-2-1). There and back is exact.</summary>
internal static class LinearLight
{
    private static readonly ushort[] FromByte = CreateFromByte();
    private static readonly byte[] ToByte = CreateToByte();

    public static ReadOnlySpan<ushort> Amounts => FromByte;

    /// <summary>The byte nearest to an amount of light.</summary>
    public static byte Encode(uint amount) => ToByte[amount];

    /// <summary>The byte nearest to an amount of light between 0 and 1; amounts outside are cut off.</summary>
    public static byte Encode(double amount)
    {
        if (!(amount > 0)) return 0;
        if (amount >= 1) return 255;
        return (byte)(255 * (amount <= 0.0031308 ? 12.92 * amount : 1.055 * Math.Pow(amount, 1 / 2.4) - 0.055) + 0.5);
    }

    private static ushort[] CreateFromByte()
    {
        var table = new ushort[256];
        for (var value = 0; value < table.Length; value++)
        {
            var encoded = value / 255.0;
            table[value] = (ushort)(65535 * (encoded <= 0.04045 ? encoded / 12.92 : Math.Pow((encoded + 0.055) / 1.055, 2.4)) + 0.5);
        }

        return table;
    }

    private static byte[] CreateToByte()
    {
        var table = new byte[65536];
        for (var amount = 0; amount < table.Length; amount++) table[amount] = Encode(amount / 65535.0);
        return table;
    }
}
