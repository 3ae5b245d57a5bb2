using System.Management.Automation;
using LayerTools.Errors;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>A profile that a user means: one that ships with the module, one in a file, or one in memory.</summary>
/// <param name="Profile">The profile, where it need not be read.</param>
/// <param name="Path">The file, where it is in one.</param>
internal sealed record ProfileReference(LayerProfile? Profile, string? Path)
{
    /// <summary>The shipped profile with this name, else the one in the file with this path.</summary>
    /// <exception cref="RefusedException">There is neither.</exception>
    /// <exception cref="LayeredFileException">The file is no profile.</exception>
    public static LayerProfile Find(SessionState session, string reference) =>
        LayerProfiles.FindShipped(reference) ?? LayerProfiles.Read(Locate(session, reference));

    /// <summary>All profiles that a value stands for; with wildcards perhaps none.</summary>
    /// <param name="cmdlet">The cmdlet, whose location counts.</param>
    /// <param name="value">A profile, a file, or a text: a name or a path, either with wildcards.</param>
    /// <exception cref="RefusedException">The value names nothing.</exception>
    public static IEnumerable<ProfileReference> FindAll(PSCmdlet cmdlet, object value) => PSObject.AsPSObject(value).BaseObject switch
    {
        LayerProfile profile => [new(profile, profile.Path)],
        FileInfo file => [new(null, file.FullName)],
        string text when WildcardPattern.ContainsWildcardCharacters(text) => FindMatching(cmdlet, text),
        string text when LayerProfiles.FindShipped(text) is { } shipped => [new(shipped, null)],
        string text => [new(null, Locate(cmdlet.SessionState, text))],
        var other => throw new RefusedException(ErrorRecords.BadArgument("NotAProfile", $"'{other}' is no profile. Give a name, the path of a *{LayerProfiles.Extension} file, or a profile from Get-LayerProfile.", other)),
    };

    /// <summary>The profile.</summary>
    /// <exception cref="LayeredFileException">The file cannot be opened, or is no profile.</exception>
    public LayerProfile Read() => Profile ?? LayerProfiles.Read(Path!);

    /// <summary>What is wrong with it.</summary>
    /// <exception cref="LayeredFileException">The file cannot be opened.</exception>
    public IReadOnlyList<ProfileFinding> Check() => Path is null ? LayerProfiles.CheckShipped(Profile!.Name) : LayerProfiles.Check(Path);

    private static IEnumerable<ProfileReference> FindMatching(PSCmdlet cmdlet, string text)
    {
        var pattern = new WildcardPattern(text, WildcardOptions.IgnoreCase | WildcardOptions.CultureInvariant);
        return LayerProfiles.Shipped.Where(profile => pattern.IsMatch(profile.Name)).Select(profile => new ProfileReference(profile, null))
            .Concat(PathResolver.Resolve(cmdlet, text).Where(path => path.EndsWith(LayerProfiles.Extension, StringComparison.OrdinalIgnoreCase)).Select(path => new ProfileReference(null, path)));
    }

    private static string Locate(SessionState session, string reference)
    {
        var path = PathResolver.ResolveLiteral(session, reference);
        return File.Exists(path) ? path : throw new RefusedException(ErrorRecords.ProfileNotFound(reference));
    }
}
