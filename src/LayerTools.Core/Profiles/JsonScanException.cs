namespace LayerTools.Profiles;

/// <summary>A text that is no JSON, or none that can be held.</summary>
internal sealed class JsonScanException(string jsonPath, TextPlace place, string problem, string remedy) : Exception(problem)
{
    /// <summary>The value that is meant.</summary>
    public string JsonPath { get; } = jsonPath;

    public TextPlace Place { get; } = place;

    public string Remedy { get; } = remedy;
}
