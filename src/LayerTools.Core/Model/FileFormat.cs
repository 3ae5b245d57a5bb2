namespace LayerTools.Model;

/// <summary>The layered file formats, named by their extensions.</summary>
public enum FileFormat
{
    /// <summary>Up to 30,000 px a side.</summary>
    Psd = 1,

    /// <summary>Up to 300,000 px a side, with 8-byte lengths.</summary>
    Psb = 2,
}
