namespace LayerTools.Pixels;

/// <summary>How a channel's samples are packed. Numbers are those the files store (PSD File Formats Specification, 'Channel image data').</summary>
public enum Compression
{
    /// <summary>Samples as they are, big-endian.</summary>
    Raw = 0,

    /// <summary>PackBits runs, each row alone, after a table of packed row lengths.</summary>
    PackBits = 1,

    /// <summary>One zlib stream (RFC 1950).</summary>
    Zip = 2,

    /// <summary>One zlib stream of differences along each row.</summary>
    ZipPrediction = 3,
}
