namespace LayerTools.Model;

/// <summary>How a layer blends beyond mode and opacity.</summary>
internal sealed record BlendingRules
{
    public static readonly BlendingRules None = new();

    public Knockout Knockout { get; init; }

    /// <summary>Colour channels that the layer leaves as they are below: 0 is red or grey.</summary>
    public IReadOnlyList<int> ExcludedChannels { get; init; } = [];

    /// <summary>Limits by brightness: at most one for the grey of the colours and one for each channel.</summary>
    public IReadOnlyList<BlendingRange> Ranges { get; init; } = [];
}
