namespace LayerTools.Model.Adjustments;

/// <summary>Shifts of dark, middle and light tones towards a colour.</summary>
/// <param name="Darks">−100 to 100 for red, green and blue.</param>
/// <param name="Middles">The same for middle tones.</param>
/// <param name="Lights">The same for light tones.</param>
/// <param name="KeepsLuminosity">Whether pixels stay as light as they were.</param>
internal sealed record ColorBalance(RgbTriple Darks, RgbTriple Middles, RgbTriple Lights, bool KeepsLuminosity) : Adjustment("colour balance");
