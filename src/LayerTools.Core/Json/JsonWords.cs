namespace LayerTools.Json;

/// <summary>The words that JSON files have for values of enumerations: their names, beginning in lower case.</summary>
internal static class JsonWords
{
    public static T Parse<T>(string word)
        where T : struct, Enum => Enum.TryParse<T>(word, ignoreCase: true, out var value) ? value : throw new ArgumentException($"'{word}' is no {typeof(T).Name}.", nameof(word));

    public static string Of<T>(T value)
        where T : struct, Enum
    {
        var name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name.Substring(1);
    }
}
