using System.Text;
using LayerTools.Checks;
using LayerTools.Errors;
using LayerTools.Formats;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Where profiles come from: the ones that ship with the module, and files. Nothing in a profile runs, and nothing that it names is fetched.</summary>
public static class LayerProfiles
{
    /// <summary>How the name of a profile's file ends.</summary>
    public const string Extension = ".layerprofile.json";

    /// <summary>Names of the shipped profiles, the default first.</summary>
    private static readonly string[] ShippedNames = ["figure", "figure-ja"];

    private static readonly Lazy<IReadOnlyList<LayerProfile>> ShippedProfiles = new(() => ShippedNames.Select(name => Bind(ReadShipped(name))).ToList());

    /// <summary>The profiles that ship with the module, the default first.</summary>
    public static IReadOnlyList<LayerProfile> Shipped => ShippedProfiles.Value;

    /// <summary>The profile that holds where none is given.</summary>
    public static LayerProfile Default => Shipped[0];

    /// <summary>The shipped profile with a name, case ignored; null if there is none.</summary>
    public static LayerProfile? FindShipped(string name) => Shipped.FirstOrDefault(profile => string.Equals(profile.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Reads a profile from a file.</summary>
    /// <param name="path">Full path of the file.</param>
    /// <exception cref="ProfileException">The file is no profile, or none that can be used; each error has its place.</exception>
    /// <exception cref="LayeredFileException">The file cannot be opened, or is larger than 1 MB.</exception>
    public static LayerProfile Read(string path)
    {
        var document = ProfileDocument.Read(path);
        var findings = Check(document);
        if (findings.Any(finding => finding.Severity == Severity.Error)) throw new ProfileException(findings);
        return Bind(document) with { Path = path };
    }

    /// <summary>Tells what is wrong with the profile in a file: its form, then, if that is right, what it says.</summary>
    /// <param name="path">Full path of the file.</param>
    /// <returns>At most 100 findings, in the order of the text; warnings do not keep the profile from being used.</returns>
    /// <exception cref="LayeredFileException">The file cannot be opened, or is larger than 1 MB.</exception>
    public static IReadOnlyList<ProfileFinding> Check(string path)
    {
        try
        {
            return Check(ProfileDocument.Read(path));
        }
        catch (ProfileException error)
        {
            return error.Findings;
        }
    }

    /// <summary>Writes a profile, and its schema beside it if none is there, so that editors can complete and check it. Whole or not at all.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="path">Full path of the file.</param>
    /// <param name="overwrite">Whether a file that is there may be replaced.</param>
    /// <returns>The profile, with its path.</returns>
    /// <exception cref="ProfileException">The profile contradicts itself; nothing was written.</exception>
    /// <exception cref="LayeredFileException">The file exists, or the operating system refused.</exception>
    public static LayerProfile Write(LayerProfile profile, string path, bool overwrite)
    {
        var folder = Path.GetDirectoryName(path)!;
        var json = ProfileWriter.ToJson(profile, ProfileSchema.FileName);
        var findings = Check(ProfileDocument.Read(path, new MemoryStream(json)));
        if (findings.Any(finding => finding.Severity == Severity.Error)) throw new ProfileException(findings);
        if (!overwrite && File.Exists(path)) throw new LayeredFileException(LayeredFileErrorKind.EditRefused, path, "profile", -1, "The file exists.", "Name another file, or overwrite it with -Force.");
        Put(path, json, overwrite);
        var schema = Path.Combine(folder, ProfileSchema.FileName);
        if (!File.Exists(schema)) Put(schema, Encoding.UTF8.GetBytes(ProfileSchema.ReadText()), overwrite: false);
        return profile with { Path = path };
    }

    /// <summary>Tells what is wrong with a shipped profile, likewise.</summary>
    internal static IReadOnlyList<ProfileFinding> CheckShipped(string name) => Check(ReadShipped(name));

    private static IReadOnlyList<ProfileFinding> Check(ProfileDocument document)
    {
        const int Most = 100;
        var findings = ProfileSchema.Check(document).Take(Most).ToList();
        if (findings.Count == 0) findings = ProfileChecks.Run(document, Bind(document)).Take(Most).ToList();
        return [.. findings.OrderBy(finding => finding.Line).ThenBy(finding => finding.Column)];
    }

    private static void Put(string path, byte[] bytes, bool overwrite)
    {
        using var file = new AtomicFile(path);
        file.Write(stream => stream.Write(bytes, 0, bytes.Length), bytes.Length);
        file.Commit(overwrite);
    }

    private static LayerProfile Bind(ProfileDocument document) => ProfileBinder.Bind((JObject)document.Root);

    private static ProfileDocument ReadShipped(string name)
    {
        using var stream = typeof(LayerProfiles).Assembly.GetManifestResourceStream(name + Extension)!;
        return ProfileDocument.Read(name, stream);
    }
}
