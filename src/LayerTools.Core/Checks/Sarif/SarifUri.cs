using LayerTools.Images;

namespace LayerTools.Checks.Sarif;

/// <summary>Places of files as URIs (RFC 3986, RFC 8089), each segment percent-encoded as UTF-8.</summary>
internal static class SarifUri
{
    /// <summary>The path seen from a folder; null if the file does not lie in it or below.</summary>
    public static string? RelativeTo(string folder, string path)
    {
        var start = folder.Length > 0 && IsSeparator(folder[folder.Length - 1]) ? folder : folder + Path.DirectorySeparatorChar;
        return path.Length > start.Length && path.StartsWith(start, StringComparison.Ordinal) ? Escape(path.Substring(start.Length)) : null;
    }

    /// <summary>The URI of a full path: <c>file:///home/nora/hero.psd</c>, <c>file:///C:/art/hero.psd</c>, <c>file://server/share/hero.psd</c>.</summary>
    public static string Absolute(string path)
    {
        var escaped = Escape(path);
        if (escaped.StartsWith("//", StringComparison.Ordinal)) return "file:" + escaped;
        return (escaped[0] == '/' ? "file://" : "file:///") + escaped;
    }

    /// <summary>The URI of a folder; ends in a slash, so that relative ones can be put behind it.</summary>
    public static string AbsoluteFolder(string path) => Absolute(path) is var uri && uri[uri.Length - 1] == '/' ? uri : uri + "/";

    private static string Escape(string path)
    {
        // Only where '\' separates folders is it no part of a name.
        var slashed = Path.DirectorySeparatorChar == '\\' ? path.Replace('\\', '/') : path;
        return string.Join("/", slashed.Split('/').Select((segment, index) => index == 0 && IsDrive(segment) ? segment : Uri.EscapeDataString(WellFormed.Of(segment))));
    }

    private static bool IsDrive(string segment) => segment.Length == 2 && segment[1] == ':' && Path.DirectorySeparatorChar == '\\';

    private static bool IsSeparator(char character) => character == Path.DirectorySeparatorChar || character == Path.AltDirectorySeparatorChar;
}
