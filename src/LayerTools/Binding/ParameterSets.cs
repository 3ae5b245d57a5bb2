namespace LayerTools.Binding;

/// <summary>Names of parameter sets that several cmdlets share.</summary>
internal static class ParameterSets
{
    public const string Path = "Path";
    public const string LiteralPath = "LiteralPath";
    public const string File = "File";
}
