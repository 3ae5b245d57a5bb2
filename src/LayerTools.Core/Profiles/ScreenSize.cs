namespace LayerTools.Profiles;

/// <summary>A screen that a figure is shown on.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Width">Columns, px.</param>
/// <param name="Height">Rows, px.</param>
public sealed record ScreenSize(string Name, int Width, int Height)
{
    /// <summary>1920 × 1080 px: one screen is the usual yardstick for detail. Common practice.</summary>
    public static ScreenSize Common { get; } = new("Full HD", 1920, 1080);
}
