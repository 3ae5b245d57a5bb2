namespace LayerTools.Model.Fills;

/// <summary>A picture repeated in both directions.</summary>
/// <param name="PatternId">By what the file knows the picture.</param>
/// <param name="Scale">1 for its own size.</param>
/// <param name="Right">Where its first column lies, canvas px.</param>
/// <param name="Down">Where its first row lies, canvas px.</param>
internal sealed record PatternFill(string PatternId, double Scale, double Right, double Down) : Fill;
