namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>
/// Named values in stored order (PSD File Formats Specification, 'Descriptor structure'). A value is a <see cref="bool"/>, <see cref="int"/>,
/// <see cref="long"/>, <see cref="double"/>, <see cref="string"/>, an array of bytes, a list of values (<see cref="IReadOnlyList{T}"/> of object),
/// a descriptor, or one of the types beside this one. Keys of four characters keep their blanks (<c>"Clr "</c>).
/// </summary>
internal sealed class Descriptor(string name, string classId, IReadOnlyList<KeyValuePair<string, object>> items)
{
    public string Name { get; } = name;

    public string ClassId { get; } = classId;

    public IReadOnlyList<KeyValuePair<string, object>> Items { get; } = items;

    /// <summary>What follows a value of unknown type, which ends the reading; null where everything was understood.</summary>
    public byte[]? Rest { get; init; }

    public bool IsComplete => Rest is null;

    /// <summary>The first value of that name; null if there is none.</summary>
    public object? Find(string key)
    {
        foreach (var item in Items)
        {
            if (item.Key == key) return item.Value;
        }

        return null;
    }

    public bool Has(string key) => Find(key) is not null;

    public Descriptor? GetDescriptor(string key) => Find(key) as Descriptor;

    /// <summary>The list's values; empty if there is none.</summary>
    public IReadOnlyList<object> GetList(string key) => Find(key) as IReadOnlyList<object> ?? [];

    /// <summary>The descriptors of a list.</summary>
    public IEnumerable<Descriptor> GetDescriptors(string key) => GetList(key).OfType<Descriptor>();

    public bool? GetBool(string key) => Find(key) as bool?;

    public string? GetText(string key) => Find(key) as string;

    /// <summary>The value's name where it is one of a type's named values.</summary>
    public string? GetEnum(string key) => (Find(key) as DescriptorEnum)?.Value;

    /// <summary>A finite number of any type, without its unit.</summary>
    public double? GetNumber(string key) => Find(key) switch
    {
        int number => number,
        long number => number,
        double number => Finite(number),
        DescriptorMeasure measure => Finite(measure.Value),
        _ => null,
    };

    private static double? Finite(double number) => double.IsNaN(number) || double.IsInfinity(number) ? null : number;
}
