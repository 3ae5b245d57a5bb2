using System.ComponentModel;
using System.Reflection;
using System.Runtime.InteropServices;

namespace LayerTools.Loader;

/// <summary>Prepares a session of Windows PowerShell for the module: see <see cref="Initialize"/>.</summary>
public static class ModuleLoader
{
    private static readonly object gate = new();
    private static string? folder;
    private static string platformFolder = string.Empty;

    /// <summary>
    /// From now on assemblies that nobody else provides come from <paramref name="assemblyFolder"/>, whatever exact version was asked for, since a
    /// module cannot bring binding redirects. There are no load contexts here. Safe to call again; the first folders stay.
    /// </summary>
    /// <param name="assemblyFolder">Full path of the folder with the assemblies built for this runtime.</param>
    /// <param name="nativeFolder">Full path of the folder with one folder of native libraries per platform, such as <c>win-x64</c>.</param>
    /// <returns>An empty array: types of the one and only context need no help to be found.</returns>
    public static Assembly[] Initialize(string assemblyFolder, string nativeFolder)
    {
        lock (gate)
        {
            if (folder is null)
            {
                folder = assemblyFolder;
                platformFolder = Path.Combine(nativeFolder, $"win-{RuntimeInformation.ProcessArchitecture.ToString().ToLowerInvariant()}");
                AppDomain.CurrentDomain.AssemblyResolve += Resolve;
                AppDomain.CurrentDomain.AssemblyLoad += LoadNativeCompanion;
            }

            return [];
        }
    }

    private static Assembly? Resolve(object sender, ResolveEventArgs asked)
    {
        var path = Path.Combine(folder!, new AssemblyName(asked.Name).Name + ".dll");
        return File.Exists(path) ? Assembly.LoadFrom(path) : null;
    }

    /// <summary>An assembly whose native library carries the name lib*.dll: once that is in the process, later calls find it by its bare name.</summary>
    private static void LoadNativeCompanion(object sender, AssemblyLoadEventArgs loaded)
    {
        var path = Path.Combine(platformFolder, $"lib{loaded.LoadedAssembly.GetName().Name}.dll");
        if (File.Exists(path) && LoadLibrary(path) == IntPtr.Zero) throw new Win32Exception(Marshal.GetLastWin32Error(), $"{path} cannot be loaded.");
    }

    [DllImport("kernel32", CharSet = CharSet.Unicode, SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern IntPtr LoadLibrary(string path);
}
