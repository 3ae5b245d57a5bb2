namespace LayerTools.Profiles;

/// <summary>How the parts are packed into textures.</summary>
public sealed record TextureProfile
{
    /// <summary>Columns and rows of a square page, px: a power of two, 1024 to 16384.</summary>
    public int PageSize { get; init; } = 4096;

    /// <summary>Free pixels around each part, 0 to 256.</summary>
    public int Padding { get; init; } = 4;

    /// <summary>Whether parts may be turned by 90°.</summary>
    public bool Turn { get; init; }

    /// <summary>The most pages; null for any number.</summary>
    public int? Pages { get; init; }
}
