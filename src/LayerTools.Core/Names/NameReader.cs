namespace LayerTools.Names;

/// <summary>Takes names apart by a vocabulary.</summary>
/// <param name="style">The words and tokens to know.</param>
public sealed class NameReader(NamingStyle style)
{
    /// <summary>Takes a name apart.</summary>
    public ParsedName Read(string name)
    {
        var sided = SideName.Parse(name);
        var part = style.Vocabulary.Parts.FirstOrDefault(part => string.Equals(part.English, sided.BaseName, StringComparison.OrdinalIgnoreCase));
        return new ParsedName { Text = name, Side = sided.Side, Part = part, Rest = part is null ? sided.BaseName : string.Empty, Certainty = part is null ? 0 : 1 };
    }
}
