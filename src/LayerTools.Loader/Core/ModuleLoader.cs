using System.Reflection;
using System.Runtime.Loader;

namespace LayerTools.Loader;

/// <summary>Prepares a session of PowerShell 7 for the module: see <see cref="Initialize"/>.</summary>
public static class ModuleLoader
{
    private const string OwnPrefix = "LayerTools.";
    private static readonly object gate = new();
    private static ModuleLoadContext? context;

    /// <summary>
    /// From now on the module's libraries, and everything they need, come from <paramref name="assemblyFolder"/> in a load context of their own,
    /// whatever copies other modules have loaded. The cmdlets' own assembly is loaded by the shell as usual and may refer to the module's libraries
    /// and to the shell only. Safe to call again; the first folders stay.
    /// </summary>
    /// <param name="assemblyFolder">Full path of the folder with the assemblies built for this runtime.</param>
    /// <param name="nativeFolder">Full path of the folder with one folder of native libraries per platform, such as <c>linux-x64</c>.</param>
    /// <returns>The module's libraries, loaded.</returns>
    public static Assembly[] Initialize(string assemblyFolder, string nativeFolder)
    {
        lock (gate)
        {
            if (context is null)
            {
                context = new ModuleLoadContext(assemblyFolder, nativeFolder);
                AssemblyLoadContext.Default.Resolving += ResolveOwn;
            }

            return [.. Directory.EnumerateFiles(assemblyFolder, OwnPrefix + "*.dll").Select(context.LoadFromAssemblyPath)];
        }
    }

    private static Assembly? ResolveOwn(AssemblyLoadContext asking, AssemblyName name) =>
        name.Name?.StartsWith(OwnPrefix, StringComparison.Ordinal) == true ? context!.LoadFromAssemblyName(name) : null;
}
