namespace LayerTools.Json;

/// <summary>A kind of JSON file that is read here: what it is called, its schema and its limits.</summary>
/// <param name="Noun">What one is called in a sentence: "profile".</param>
/// <param name="Extension">How its name ends.</param>
/// <param name="SchemaId">The id that files refer to.</param>
/// <param name="SchemaFile">What the schema's file is called; it is embedded under this name too.</param>
internal sealed record JsonFormat(string Noun, string Extension, string SchemaId, string SchemaFile)
{
    /// <summary>Most bytes.</summary>
    public int LargestFile { get; init; } = 1 << 20;

    /// <summary>Most properties and values, each counted as one.</summary>
    public int MostItems { get; init; } = 100_000;
}
