namespace LayerTools.Json;

/// <summary>Something that is wrong with a value in a JSON text.</summary>
/// <param name="JsonPath">The value that is meant, as a JSONPath (RFC 9535).</param>
/// <param name="Place">Where it begins.</param>
/// <param name="Problem">What is wrong, as a sentence.</param>
/// <param name="Remedy">What to do, as a sentence.</param>
internal sealed record JsonFault(string JsonPath, TextPlace Place, string Problem, string Remedy);
