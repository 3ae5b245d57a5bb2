namespace LayerTools.Json;

/// <summary>A place in a text.</summary>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">UTF-16 units from the start of the line, from 1.</param>
internal sealed record TextPlace(int Line, int Column);
