namespace LayerTools.Model;

/// <summary>How a file's channels make colours. Numbers are those of the file header.</summary>
public enum ColorMode
{
    /// <summary>Black and white, one bit.</summary>
    Bitmap = 0,

    /// <summary>One grey channel.</summary>
    Grayscale = 1,

    /// <summary>One channel that points into a table of colours.</summary>
    Indexed = 2,

    /// <summary>Red, green, blue.</summary>
    Rgb = 3,

    /// <summary>Cyan, magenta, yellow, black.</summary>
    Cmyk = 4,

    /// <summary>Any number of ink channels.</summary>
    Multichannel = 7,

    /// <summary>One grey channel printed with several inks.</summary>
    Duotone = 8,

    /// <summary>CIE L*a*b*.</summary>
    Lab = 9,
}
