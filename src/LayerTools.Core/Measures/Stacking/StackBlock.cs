using LayerTools.Model;

namespace LayerTools.Measures.Stacking;

/// <summary>Layers of one group that keep together: a layer with what is clipped to it, and in front of it what belongs nowhere and lies on it.</summary>
/// <param name="Layers">Front to back.</param>
/// <param name="Owner">The layer whose name says where they belong; the front-most where none does.</param>
/// <param name="Rank">Where they belong, 0 = front-most zone; <see cref="Front"/> for what stays over all, <see cref="Back"/> for what stays behind all.</param>
internal sealed record StackBlock(IReadOnlyList<Layer> Layers, Layer Owner, int Rank)
{
    public const int Front = -1;

    public const int Back = int.MaxValue;
}
