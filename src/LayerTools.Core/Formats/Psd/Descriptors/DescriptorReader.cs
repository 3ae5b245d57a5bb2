using LayerTools.Errors;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Reads descriptors from a block's bytes, when somebody wants what they say.</summary>
internal sealed class DescriptorReader
{
    /// <summary>Descriptors and lists inside each other.</summary>
    public const int DeepestNesting = 64;

    /// <summary>The version that stands before a descriptor.</summary>
    private const int Version = 16;

    /// <summary>Length of a key, a key of one character, type, a value of one byte.</summary>
    private const int LeastItemBytes = 10;

    /// <summary>Type and a value of one byte.</summary>
    private const int LeastListBytes = 5;

    private static readonly object True = true;
    private static readonly object False = false;

    private readonly DescriptorInput input;
    private int depth;

    /// <summary>Is shown each descriptor once it was read, inner ones first; null if nobody wants to see them.</summary>
    private Action<PlacedDescriptor>? visitor;

    /// <summary>Set by a value of unknown type: its length is unknown too, so that nothing behind it can be read.</summary>
    private bool isStopped;

    private DescriptorReader(DescriptorInput input) => this.input = input;

    /// <summary>Reads a descriptor that follows its version number.</summary>
    /// <param name="data">The block's bytes.</param>
    /// <param name="position">Where the version number stands.</param>
    /// <param name="section">What is read, for errors.</param>
    /// <exception cref="LayeredFileException">A length or count contradicts the bytes, the version is unknown, or the nesting is too deep.</exception>
    public static Descriptor ReadVersioned(byte[] data, int position, string section)
    {
        var input = new DescriptorInput(data, position, section);
        var version = input.ReadInt32();
        return version == Version ? Read(input) : throw input.Damaged($"Its descriptor has version {version}; only {Version} is known.");
    }

    /// <summary>Reads a descriptor and leaves the input behind it.</summary>
    public static Descriptor Read(DescriptorInput input)
    {
        var reader = new DescriptorReader(input);
        var read = reader.ReadDescriptor();
        return reader.isStopped ? new Descriptor(read.Name, read.ClassId, read.Items) { Rest = input.CopyRest() } : read;
    }

    /// <summary>Shows every descriptor inside one, and that itself, together with the places where its values stand.</summary>
    /// <param name="data">The block's bytes.</param>
    /// <param name="position">Where the version number stands.</param>
    /// <param name="section">What is read, for errors.</param>
    /// <param name="visitor">Sees inner descriptors first.</param>
    /// <exception cref="LayeredFileException">As of <see cref="ReadVersioned"/>.</exception>
    /// <returns>Whether all of it was understood.</returns>
    public static bool Visit(byte[] data, int position, string section, Action<PlacedDescriptor> visitor)
    {
        var input = new DescriptorInput(data, position, section);
        var version = input.ReadInt32();
        if (version != Version) throw input.Damaged($"Its descriptor has version {version}; only {Version} is known.");
        var reader = new DescriptorReader(input) { visitor = visitor };
        reader.ReadDescriptor();
        return !reader.isStopped;
    }

    private Descriptor ReadDescriptor()
    {
        Deepen();
        var name = input.ReadText();
        var classId = input.ReadKey();
        var count = input.ReadCount(LeastItemBytes);
        var items = new List<KeyValuePair<string, object>>();
        var ends = new List<int>();
        for (var i = 0; i < count && !isStopped; i++)
        {
            var key = input.ReadKey();
            if (ReadValue() is not { } value) continue;
            items.Add(new KeyValuePair<string, object>(key, value));
            ends.Add(input.Position);
        }

        depth--;
        var descriptor = new Descriptor(name, classId, items);
        visitor?.Invoke(new PlacedDescriptor(descriptor, ends));
        return descriptor;
    }

    private List<object> ReadList()
    {
        Deepen();
        var count = input.ReadCount(LeastListBytes);
        var values = new List<object>();
        for (var i = 0; i < count && !isStopped; i++)
        {
            if (ReadValue() is { } value) values.Add(value);
        }

        depth--;
        return values;
    }

    /// <summary>Null for a type that is not known.</summary>
    private object? ReadValue()
    {
        switch (input.ReadCodeText())
        {
            case "Objc" or "GlbO": return ReadDescriptor();
            case "ObAr": return ReadObjectArray();
            case "VlLs": return ReadList();
            case "bool": return input.ReadByte() != 0 ? True : False;
            case "long": return input.ReadInt32();
            case "comp": return input.ReadInt64();
            case "doub": return input.ReadDouble();
            case "UntF": return new DescriptorMeasure(input.ReadCodeText(), input.ReadDouble());
            case "UnFl": return ReadMeasures();
            case "TEXT": return input.ReadText();
            case "enum": return new DescriptorEnum(input.ReadKey(), input.ReadKey());
            case "type" or "GlbC": return new DescriptorClass(input.ReadText(), input.ReadKey());
            case "alis" or "tdta" or "Pth ": return input.ReadBytes();
            case "obj ": return ReadReference();
            default: return Stop();
        }
    }

    private Descriptor ReadObjectArray()
    {
        input.ReadInt32();
        return ReadDescriptor();
    }

    private DescriptorMeasures ReadMeasures()
    {
        var unit = input.ReadCodeText();
        var values = new double[input.ReadCount(sizeof(double))];
        for (var i = 0; i < values.Length; i++) values[i] = input.ReadDouble();
        return new DescriptorMeasures(unit, values);
    }

    private List<object> ReadReference()
    {
        // form and a number
        const int LeastBytes = 8;
        var count = input.ReadCount(LeastBytes);
        var steps = new List<object>();
        for (var i = 0; i < count && !isStopped; i++)
        {
            var form = input.ReadCodeText();
            if (form is "Idnt" or "indx")
            {
                steps.Add(new DescriptorReference(form, string.Empty, input.ReadInt32()));
                continue;
            }

            if (form is not ("prop" or "Clss" or "Enmr" or "rele" or "name"))
            {
                Stop();
                break;
            }

            input.ReadText();
            var classId = input.ReadKey();
            steps.Add(new DescriptorReference(form, classId, form switch
            {
                "prop" => input.ReadKey(),
                "Enmr" => new DescriptorEnum(input.ReadKey(), input.ReadKey()),
                "rele" => input.ReadInt32(),
                "name" => input.ReadText(),
                _ => null,
            }));
        }

        return steps;
    }

    private object? Stop()
    {
        isStopped = true;
        return null;
    }

    private void Deepen()
    {
        if (++depth > DeepestNesting) throw input.TooDeep(DeepestNesting);
    }
}
