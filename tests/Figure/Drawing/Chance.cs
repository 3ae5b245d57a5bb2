namespace LayerTools.Figure.Drawing;

/// <summary>Numbers that look accidental and are the same in every run.</summary>
internal static class Chance
{
    /// <summary>A well mixed number for a place.</summary>
    public static uint Hash(int x, int y)
    {
        unchecked
        {
            var value = (uint)x * 0x9E3779B1 ^ (uint)y * 0x85EBCA77 ^ 0x27D4EB2F;
            value = (value ^ value >> 15) * 0x2C1B3C6D;
            value = (value ^ value >> 12) * 0x297A2D39;
            return value ^ value >> 15;
        }
    }

    /// <summary>A number from <paramref name="low"/> to <paramref name="high"/>; <paramref name="item"/> and <paramref name="use"/> say which.</summary>
    public static float Between(float low, float high, int item, int use) => low + (high - low) * (Hash(item + 1, use + 101) / (float)uint.MaxValue);
}
