namespace LayerTools.Model.Adjustments;

/// <summary>Each channel becomes a sum of parts of all.</summary>
/// <param name="Rows">For red, green and blue; a single one if all three become the same.</param>
internal sealed record ChannelMix(IReadOnlyList<ChannelMixRow> Rows) : Adjustment("channel mix");
