using System.Globalization;

namespace LayerTools.Deliveries;

/// <summary>
/// What a part looks like from afar, its painted rectangle stretched over a square.
/// <para>The hash is the block mean hash of B. Yang, F. Gu and X. Niu, "Block Mean Value Based Image Perceptual Hashing", IIH-MSP 2006, method 1:
/// the picture is brought to one size and cut into blocks that do not overlap; each bit says whether a block's mean is at least the median of all means.
/// The part is seen on a mid-grey ground, so that both white and dark parts stand out from where there is none.</para>
/// </summary>
internal sealed class PartLook
{
    /// <summary>Blocks along each side.</summary>
    public const int Side = 16;

    private const int BitCount = Side * Side;
    private const int Ground = 128;

    private readonly ulong[] bits;

    private PartLook(ulong[] bits, CoarsePicture? picture) => (this.bits, Picture) = (bits, picture);

    /// <summary>The coarse picture; null for a look that was read from its hash.</summary>
    public CoarsePicture? Picture { get; }

    /// <summary>The look of a coarse picture of <see cref="Side"/> blocks a side.</summary>
    public static PartLook Create(CoarsePicture picture)
    {
        var pixels = picture.Pixels;
        var means = new int[BitCount];
        for (var block = 0; block < means.Length; block++)
        {
            var (red, green, blue, alpha) = (pixels[4 * block], pixels[(4 * block) + 1], pixels[(4 * block) + 2], pixels[(4 * block) + 3]);

            // Luma of ITU-R BT.601, in thousandths, over the ground.
            means[block] = (299 * red) + (587 * green) + (114 * blue) + (Ground * 1000 * (byte.MaxValue - alpha) / byte.MaxValue);
        }

        var sorted = (int[])means.Clone();
        Array.Sort(sorted);
        var median = sorted[sorted.Length / 2];
        var bits = new ulong[BitCount / 64];
        for (var block = 0; block < means.Length; block++)
        {
            if (means[block] >= median) bits[block >> 6] |= 1UL << (block & 63);
        }

        return new PartLook(bits, picture);
    }

    /// <summary>A look from its hash as <see cref="ToString"/> writes it; null if it is none.</summary>
    public static PartLook? TryParse(string text)
    {
        if (text.Length != BitCount / 4) return null;
        var bits = new ulong[BitCount / 64];
        for (var i = 0; i < text.Length; i++)
        {
            if (!Uri.IsHexDigit(text[i])) return null;
            bits[i / 16] = (bits[i / 16] << 4) | (uint)Uri.FromHex(text[i]);
        }

        return new PartLook(bits, null);
    }

    /// <summary>How alike two looks are: 1 for the same hash, 0 where half of it differs or more, as it does for pictures that have nothing in common.</summary>
    public double CompareHash(PartLook other)
    {
        var differing = 0;
        for (var word = 0; word < bits.Length; word++)
        {
            for (var rest = bits[word] ^ other.bits[word]; rest != 0; rest &= rest - 1) differing++;
        }

        return Math.Max(0, 1 - (2.0 * differing / BitCount));
    }

    /// <summary>How alike two looks are, 0 to 1: by their pictures where both have one, else by their hashes.</summary>
    public double Compare(PartLook other) => Picture is { } one && other.Picture is { } two ? one.Compare(two) : CompareHash(other);

    /// <summary>The hash in hexadecimal digits.</summary>
    public override string ToString() => string.Concat(bits.Select(word => word.ToString("x16", CultureInfo.InvariantCulture)));
}
