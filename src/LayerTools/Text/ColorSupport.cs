using System.Management.Automation;

namespace LayerTools.Text;

/// <summary>Whether text may be coloured: only for a person at a terminal that can, and who has not said no.</summary>
internal static class ColorSupport
{
    public static bool IsWanted(PSCmdlet cmdlet)
    {
        var isLast = cmdlet.MyInvocation.PipelinePosition == cmdlet.MyInvocation.PipelineLength;
        if (!isLast || Console.IsOutputRedirected) return false;
        // The convention of no-color.org: any value but an empty one.
        if (!string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))) return false;
        if (cmdlet.Host?.UI?.SupportsVirtualTerminal != true) return false;
        return GetRendering(cmdlet) is not "PlainText";
    }

    // Windows PowerShell has no $PSStyle; what it cannot say is not forbidden.
    private static string? GetRendering(PSCmdlet cmdlet) =>
        cmdlet.GetVariableValue("PSStyle") is { } style ? PSObject.AsPSObject(style).Properties["OutputRendering"]?.Value?.ToString() : null;
}
