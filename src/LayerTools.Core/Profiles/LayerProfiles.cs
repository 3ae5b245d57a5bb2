using LayerTools.Errors;

namespace LayerTools.Profiles;

/// <summary>Where profiles come from: the ones that ship with the module, and files.</summary>
public static class LayerProfiles
{
    /// <summary>How the name of a profile's file ends.</summary>
    public const string Extension = ".layerprofile.json";

    /// <summary>Names of the shipped profiles, the default first.</summary>
    private static readonly string[] ShippedNames = ["figure", "figure-ja"];

    private static readonly Lazy<IReadOnlyList<LayerProfile>> ShippedProfiles = new(() => ShippedNames.Select(ReadShipped).ToList());

    /// <summary>The profiles that ship with the module, the default first.</summary>
    public static IReadOnlyList<LayerProfile> Shipped => ShippedProfiles.Value;

    /// <summary>The profile that holds where none is given.</summary>
    public static LayerProfile Default => Shipped[0];

    /// <summary>The shipped profile with a name, case ignored; null if there is none.</summary>
    public static LayerProfile? FindShipped(string name) => Shipped.FirstOrDefault(profile => string.Equals(profile.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Reads a profile from a file.</summary>
    /// <param name="path">Full path of the file.</param>
    /// <exception cref="LayeredFileException">The file cannot be opened, or is no profile.</exception>
    public static LayerProfile Read(string path) => ProfileBinder.Bind(ProfileJson.Parse(ProfileJson.ReadBytes(path), path)) with { Path = path };

    private static LayerProfile ReadShipped(string name)
    {
        using var stream = typeof(LayerProfiles).Assembly.GetManifestResourceStream(name + Extension)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return ProfileBinder.Bind(ProfileJson.Parse(bytes.ToArray(), name));
    }
}
