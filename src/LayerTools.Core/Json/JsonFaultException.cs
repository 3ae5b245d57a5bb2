namespace LayerTools.Json;

/// <summary>A text that is no JSON, or none that can be held.</summary>
internal sealed class JsonFaultException(JsonFault fault) : Exception(fault.Problem)
{
    public JsonFault Fault { get; } = fault;
}
