namespace LayerTools.Names;

/// <summary>
/// Puts single names into a profile's form. A new name is accepted only if reading it gives the same part, side and number and writing that gives the same
/// name, so that doing it twice is doing it once.
/// </summary>
/// <param name="style">The form.</param>
internal sealed class NameNormalizer(NamingStyle style)
{
    /// <summary>Readings less sure than this are left alone. A rule of thumb of ours: three words that nobody knows, or two parts in one name of which the last
    /// would get another word ("scarf fringe" is no "scarf hair front").</summary>
    public const double LeastCertainty = 0.6;

    // A name like "front thin hair" is understood better once it is written "hair front thin"; more rounds than this were never needed.
    private const int MostRounds = 3;

    private readonly NameReader reader = new(style);
    private readonly NameWriter writer = new(style);

    /// <summary>The new form of a name.</summary>
    /// <param name="name">The name.</param>
    /// <param name="largestNumber">The largest number that it may have to get.</param>
    public NormalName Normalize(string name, int largestNumber)
    {
        var read = reader.Read(name);
        if (read.Part is null) return Leave(read, read.Reasons[read.Reasons.Count - 1]);
        if (read.Certainty < LeastCertainty) return Leave(read, "It is not sure enough what is meant.");
        var form = read;
        for (var round = 0; round < MostRounds; round++)
        {
            if (IsStable(form, form.Number) && IsStable(form, largestNumber)) return Fit(read, form, largestNumber);
            form = reader.Read(Write(form, form.Number));
            if (form.Part is null || form.Side != read.Side || form.Number != read.Number) break;
        }

        return Leave(read, $"Written as '{Write(read, read.Number)}' it would be understood in another way.");
    }

    /// <summary>The new name with a number.</summary>
    /// <param name="name">A name that does not have to stay as it is.</param>
    /// <param name="number">Its number; null for none.</param>
    public string Write(NormalName name, int? number) => Write(name.Form!, number);

    private static NormalName Leave(ParsedName read, string why) => new(read, null, string.Empty, why);

    private NormalName Fit(ParsedName read, ParsedName form, int largestNumber)
    {
        var longest = Math.Max(Write(form, form.Number).Length, Write(form, largestNumber).Length);
        return longest > style.LongestName
            ? Leave(read, FormattableString.Invariant($"Its new name could get longer than {style.LongestName} characters."))
            : new NormalName(read, form, Write(form, null), null);
    }

    private bool IsStable(ParsedName form, int? number)
    {
        var written = Write(form, number);
        var again = reader.Read(written);
        return again.Part?.Key == form.Part!.Key && again.Side == form.Side && again.Number == number && again.Certainty >= LeastCertainty && Write(again, again.Number) == written;
    }

    private string Write(ParsedName form, int? number) => writer.Write(form, number);
}
