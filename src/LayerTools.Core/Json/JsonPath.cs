using System.Text.RegularExpressions;
using Newtonsoft.Json.Linq;

namespace LayerTools.Json;

/// <summary>Writes places in JSON as paths (RFC 9535, JSONPath).</summary>
internal static class JsonPath
{
    public const string Root = "$";

    private static readonly Regex Plain = new(@"\A[A-Za-z_][A-Za-z0-9_]*\z", RegexOptions.CultureInvariant);

    public static string Of(JToken token) => token switch
    {
        JProperty property => Of(property.Parent, property.Name),
        { Parent: JProperty property } => Of(property),
        { Parent: JArray list } => Item(Of(list), list.IndexOf(token)),
        _ => Root,
    };

    public static string Property(string parent, string name) =>
        Plain.IsMatch(name) ? $"{parent}.{name}" : $"{parent}['{name.Replace("\\", "\\\\").Replace("'", "\\'")}']";

    public static string Item(string parent, int index) => FormattableString.Invariant($"{parent}[{index}]");

    private static string Of(JToken? parent, string name) => Property(parent is null ? Root : Of(parent), name);
}
