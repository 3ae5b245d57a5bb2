namespace LayerTools.Model.Fills;

/// <summary>A colour as the file's channels store it, 0 to 1; a grey has three equal parts. (Observed: so at 32 bit too.)</summary>
internal readonly record struct FillColor(float Red, float Green, float Blue)
{
    /// <summary>The value of a colour channel; files of one channel take the brightness that the eye sees (weights of Rec. 601).</summary>
    public float Get(int channel, int channelCount) => channelCount == 1
        ? (0.299f * Red) + (0.587f * Green) + (0.114f * Blue)
        : channel switch { 0 => Red, 1 => Green, _ => Blue };
}
