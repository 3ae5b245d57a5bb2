namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>
/// Normal mode with pixels that are there or not: a pixel is there where its opacity is above a noise value that depends on its place
/// on the canvas alone, so that a picture comes out the same each time, however it is cut into bands. The noise is the upper 24 bits of
/// the column and row multiplied by two odd numbers, added up and mixed by the finishing steps of the public-domain hash MurmurHash3, as a fraction.
/// </summary>
internal sealed class DissolveBlender : Blender
{
    private readonly NormalBlender normal = new();

    public override void DrawOver(PixelRow target, int at, PixelRow source, int count) => normal.DrawOver(target, at, source, count);

    public override void DrawInside(PixelRow target, int at, PixelRow source, int count) => normal.DrawInside(target, at, source, count);

    public override void Settle(float[] alpha, int x, int y, int count)
    {
        for (var i = 0; i < count; i++) alpha[i] = alpha[i] > GetNoise(x + i, y) ? 1f : 0f;
    }

    /// <summary>0 or more and less than 1; all values equally often.</summary>
    public static float GetNoise(int x, int y)
    {
        unchecked
        {
            var hash = ((uint)x * 0x9E3779B1u) + ((uint)y * 0x85EBCA77u);
            hash = (hash ^ (hash >> 16)) * 0x85EBCA6Bu;
            hash = (hash ^ (hash >> 13)) * 0xC2B2AE35u;
            return ((hash ^ (hash >> 16)) >> 8) / (float)(1 << 24);
        }
    }
}
