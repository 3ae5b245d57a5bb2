namespace LayerTools.Formats;

/// <summary>Limits that keep a damaged or hostile file from taking the machine down. A refusal names the limit; each can be raised.</summary>
public sealed record ReadLimits
{
    /// <summary>The limits that hold when nothing else is said.</summary>
    public static ReadLimits Default { get; } = new();

    /// <summary>Most layer records a file may have, dividers of groups included.</summary>
    public int Layers { get; init; } = 8_000;

    /// <summary>Deepest nesting of groups; values above 1,000 count as 1,000, since each level takes room on the stack.</summary>
    public int GroupDepth { get; init; } = 100;

    /// <summary>Most memory, in megabytes of 2^20 bytes, that the paths of all layers may take together: in deep groups with long names each layer repeats them all.</summary>
    public int PathMegabytes { get; init; } = 32;

    /// <summary>Most memory, in megabytes of 2^20 bytes, that one layer's or one picture's samples may take unpacked.</summary>
    public int MemoryMegabytes { get; init; } = 2_048;

    /// <summary>Most pixels, in millions, that one picture may have that is written from a layer or a file. Each takes 4 bytes of memory a pixel while it is written.</summary>
    public int PictureMegapixels { get; init; } = 500;
}
