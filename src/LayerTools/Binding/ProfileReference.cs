using System.Management.Automation;
using LayerTools.Errors;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>Finds the profile that a user means by a name or a path.</summary>
internal static class ProfileReference
{
    /// <summary>The shipped profile with this name, else the one in the file with this path.</summary>
    /// <exception cref="RefusedException">There is neither.</exception>
    /// <exception cref="LayeredFileException">The file is no profile.</exception>
    public static LayerProfile Find(SessionState session, string reference)
    {
        if (LayerProfiles.FindShipped(reference) is { } shipped) return shipped;
        var path = PathResolver.ResolveLiteral(session, reference);
        if (!File.Exists(path)) throw new RefusedException(ErrorRecords.ProfileNotFound(reference));
        return LayerProfiles.Read(path);
    }
}
