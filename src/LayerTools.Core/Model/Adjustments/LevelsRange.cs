namespace LayerTools.Model.Adjustments;

/// <summary>How the tones of a channel are stretched.</summary>
/// <param name="Black">The level that becomes the darkest, 0 to 253.</param>
/// <param name="White">The level that becomes the lightest, 2 to 255.</param>
/// <param name="Darkest">What black becomes, 0 to 255.</param>
/// <param name="Lightest">What white becomes, 0 to 255; may be darker than <paramref name="Darkest"/>.</param>
/// <param name="Gamma">Above 1 the middle tones get lighter; 0.1 to 9.99.</param>
internal sealed record LevelsRange(int Black, int White, int Darkest, int Lightest, double Gamma)
{
    public static LevelsRange Unchanged { get; } = new(0, 255, 0, 255, 1);
}
