using System.Collections;
using System.Globalization;
using System.Management.Automation;
using LayerTools.Formats;

namespace LayerTools.Binding;

/// <summary>Reads the limits a user raises from a hashtable.</summary>
internal static class ReadLimitsTable
{
    /// <exception cref="RefusedException">A key or a value is not one of a limit.</exception>
    public static ReadLimits Parse(Hashtable table)
    {
        var limits = ReadLimits.Default;
        foreach (DictionaryEntry entry in table)
        {
            var key = Convert.ToString(entry.Key, CultureInfo.InvariantCulture) ?? string.Empty;
            limits = key.ToUpperInvariant() switch
            {
                "LAYERS" => limits with { Layers = ToCount(key, entry.Value) },
                "GROUPDEPTH" => limits with { GroupDepth = ToCount(key, entry.Value) },
                "PATHMEGABYTES" => limits with { PathMegabytes = ToCount(key, entry.Value) },
                "MEMORYMEGABYTES" => limits with { MemoryMegabytes = ToCount(key, entry.Value) },
                "PICTUREMEGAPIXELS" => limits with { PictureMegapixels = ToCount(key, entry.Value) },
                _ => throw Refuse($"'{key}' is not a limit. The limits are Layers, GroupDepth, PathMegabytes, MemoryMegabytes and PictureMegapixels, for example -Limit @{{ Layers = 20000 }}.", table),
            };
        }

        return limits;
    }

    private static int ToCount(string key, object? value) =>
        LanguagePrimitives.TryConvertTo<int>(value, CultureInfo.InvariantCulture, out var count) && count > 0
            ? count
            : throw Refuse($"The limit {key} must be a whole number from 1 to {int.MaxValue.ToString(CultureInfo.InvariantCulture)}, and '{value}' is not.", value);

    private static RefusedException Refuse(string message, object? target) => new(ErrorRecords.BadArgument("BadLimit", message, target));
}
