namespace LayerTools.Model.Adjustments;

/// <summary>What a channel becomes: percents of the old channels and of white, −200 to 200.</summary>
internal sealed record ChannelMixRow(int Red, int Green, int Blue, int Constant);
