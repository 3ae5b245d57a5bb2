namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>Something that lets a part of a layer or group through: a mask.</summary>
internal interface ICoverage
{
    /// <summary>Multiplies the first <paramref name="count"/> pixels' alpha by what is let through at canvas column <paramref name="x"/> and after.</summary>
    void Apply(float[] alpha, int x, int y, int count, Workspace workspace);
}
