using System.Runtime.InteropServices;
using LayerTools.Errors;

namespace LayerTools.Sheets.Rendering;

/// <summary>Tells in words when the libraries that draw text and pictures are missing; nothing else of the module needs them.</summary>
internal static class NativeLibraries
{
    private static readonly string[] Names = ["SkiaSharp", "HarfBuzzSharp"];

    /// <exception cref="SheetException">A library cannot be loaded.</exception>
    public static T Guard<T>(string path, Func<T> draw)
    {
        try
        {
            return draw();
        }
        catch (Exception error) when (FindMissing(error) is { } missing)
        {
            throw new SheetException(LayeredFileErrorKind.NotSupported, path, $"The library {missing}, which draws sheets, cannot be loaded on this machine.",
                Describe(missing), error);
        }
    }

    /// <summary>What to install.</summary>
    private static string Describe(string library)
    {
        const string Rest = "All other commands work without it.";
        if (Array.IndexOf(Names, library) < 0) return $"Install the module again, with the native files for this system in its folder. {Rest}";
        var (extension, package) = RuntimeInformation.IsOSPlatform(OSPlatform.Windows) ? ("dll", "Win32")
            : RuntimeInformation.IsOSPlatform(OSPlatform.OSX) ? ("dylib", "macOS")
            : ("so", library == "SkiaSharp" ? "Linux.NoDependencies" : "Linux");
        var file = $"lib{library}.{extension}";
        var processor = RuntimeInformation.ProcessArchitecture.ToString().ToLowerInvariant();
        return $"Install the module again, so that its folder has {library}.dll and {file} for this system ({processor}); the latter is in the NuGet package {library}.NativeAssets.{package}. {Rest}";
    }

    private static string? FindMissing(Exception error) => error switch
    {
        TypeInitializationException { InnerException: { } inner } type => FindMissing(inner) ?? FindName(type.TypeName),
        DllNotFoundException or EntryPointNotFoundException or BadImageFormatException => FindName(error.Message) ?? "of native code",
        FileNotFoundException { FileName: { } name } => FindName(name),
        FileLoadException { FileName: { } name } => FindName(name),
        _ => null,
    };

    private static string? FindName(string text) => Array.Find(Names, name => text.Contains(name));
}
