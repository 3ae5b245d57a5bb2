#if !NET8_0_OR_GREATER
namespace LayerTools.Pixels;

/// <summary>The checksum of a zlib stream (RFC 1950, section 9), for frameworks that know only the deflated part.</summary>
internal sealed class Adler32
{
    private const uint Modulus = 65521;

    /// <summary>How many bytes can be summed before the sums could leave 32 bits.</summary>
    private const int BytesPerReduction = 5552;

    private uint sum = 1;
    private uint sumOfSums;

    public uint Value => (sumOfSums << 16) | sum;

    public void Add(ReadOnlySpan<byte> bytes)
    {
        while (!bytes.IsEmpty)
        {
            var count = Math.Min(bytes.Length, BytesPerReduction);
            foreach (var value in bytes.Slice(0, count))
            {
                sum += value;
                sumOfSums += sum;
            }

            sum %= Modulus;
            sumOfSums %= Modulus;
            bytes = bytes.Slice(count);
        }
    }
}
#endif
