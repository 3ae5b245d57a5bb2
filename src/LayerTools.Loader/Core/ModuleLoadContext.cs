using System.Reflection;
using System.Runtime.InteropServices;
using System.Runtime.Loader;

namespace LayerTools.Loader;

/// <summary>Holds the module's libraries and all third-party assemblies, apart from what the shell and other modules load.</summary>
internal sealed class ModuleLoadContext(string assemblyFolder, string nativeFolder) : AssemblyLoadContext("LayerTools", isCollectible: false)
{
    protected override Assembly? Load(AssemblyName assemblyName)
    {
        var path = Path.Combine(assemblyFolder, assemblyName.Name + ".dll");
        return File.Exists(path) ? LoadFromAssemblyPath(path) : null;
    }

    protected override IntPtr LoadUnmanagedDll(string unmanagedDllName)
    {
        var path = Path.Combine(nativeFolder, Platform, Path.ChangeExtension(unmanagedDllName, Extension));
        return File.Exists(path) ? LoadUnmanagedDllFromPath(path) : IntPtr.Zero;
    }

    private static string Extension =>
        RuntimeInformation.IsOSPlatform(OSPlatform.Windows) ? ".dll" : RuntimeInformation.IsOSPlatform(OSPlatform.OSX) ? ".dylib" : ".so";

    /// <summary>The folder's name for this process: one macOS library holds both architectures.</summary>
    private static string Platform
    {
        get
        {
            var architecture = RuntimeInformation.ProcessArchitecture.ToString().ToLowerInvariant();
            if (RuntimeInformation.IsOSPlatform(OSPlatform.Windows)) return $"win-{architecture}";
            return RuntimeInformation.IsOSPlatform(OSPlatform.OSX) ? "osx" : $"{(IsMusl ? "linux-musl" : "linux")}-{architecture}";
        }
    }

    // Runtimes before .NET 8 name the distribution instead of its C library.
    private static bool IsMusl =>
        AppContext.GetData("RUNTIME_IDENTIFIER") is string runtime && (runtime.Contains("musl", StringComparison.Ordinal) || runtime.StartsWith("alpine", StringComparison.Ordinal));
}
