namespace LayerTools.Names;

/// <summary>A name and what it becomes in a profile's form.</summary>
/// <param name="Read">The name taken apart.</param>
/// <param name="Form">The reading that is written; null if the name has to stay as it is.</param>
/// <param name="Stem">The new name less its number; empty if the name has to stay as it is.</param>
/// <param name="Why">Why it stays as it is; null if it does not have to.</param>
internal sealed record NormalName(ParsedName Read, ParsedName? Form, string Stem, string? Why);
