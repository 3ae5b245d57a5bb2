namespace LayerTools.Names;

/// <summary>Gathers how a name was understood, and how sure that is: each guess multiplies the certainty. The factors are ours, chosen so that a clean name
/// is above 0.9, one with a word that nobody knows about 0.85, and one that names two parts below 0.75.</summary>
internal sealed class NameGuess
{
    public const double Copy = 0.98;
    public const double Synonym = 0.98;
    public const double Direction = 0.97;
    public const double Qualifier = 0.98;
    public const double UnknownWord = 0.85;
    public const double SideWithin = 0.9;
    public const double BothSides = 0.8;
    public const double SeveralNumbers = 0.9;
    public const double OtherPart = 0.7;
    public const double OtherPartAndWord = 0.6;
    public const double DetailAlone = 0.9;

    /// <summary>A name that is read with less than this says no place: above all one of two parts, like "scarf tail" or "lantern cap".</summary>
    public const double LeastForPlace = 0.72;

    private readonly List<string> reasons = [];
    private double certainty = 1;

    public IReadOnlyList<string> Reasons => reasons;

    public double Certainty => Math.Round(certainty, 2);

    public void Note(string reason, double factor)
    {
        reasons.Add(reason);
        certainty *= factor;
    }
}
