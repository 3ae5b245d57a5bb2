namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>A number with a unit: <c>#Ang</c> degrees, <c>#Prc</c> percent, <c>#Pxl</c> pixels, <c>#Rsl</c> per inch, <c>#Rlt</c> points, <c>#Nne</c> none, <c>#Mlm</c> millimetres.</summary>
internal sealed record DescriptorMeasure(string Unit, double Value);

/// <summary>Several numbers of one unit.</summary>
internal sealed record DescriptorMeasures(string Unit, IReadOnlyList<double> Values);

/// <summary>One of the named values of a type.</summary>
internal sealed record DescriptorEnum(string Type, string Value);

/// <summary>The name of a class where a value stands elsewhere.</summary>
internal sealed record DescriptorClass(string Name, string Id);

/// <summary>A step of a reference to something: <c>prop</c>, <c>Clss</c>, <c>Enmr</c>, <c>rele</c>, <c>Idnt</c>, <c>indx</c> or <c>name</c>, with what it names.</summary>
internal sealed record DescriptorReference(string Form, string ClassId, object? Target);
