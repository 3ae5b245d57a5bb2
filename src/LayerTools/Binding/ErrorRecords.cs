using System.Management.Automation;
using LayerTools.Errors;
using LayerTools.Ledgers;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>The one place where error records are made: stable ids, true categories, the target that a script can look at.</summary>
internal static class ErrorRecords
{
    public static ErrorRecord FromCore(LayeredFileException error, object? target) =>
        new(error, error.Kind.ToString(), GetCategory(error), target ?? error.Path);

    public static ErrorRecord PathNotFound(string path) => Create(
        new ItemNotFoundException(path.StartsWith("@{", StringComparison.Ordinal)
            ? "What came through the pipeline is no path and no layered file, but facts that were read from JSON or CSV or came from another process. Begin with Get-LayerFile and a path."
            : $"{path}: There is no such file. Check the path{(path.Contains('[') ? "; a name with brackets in it goes to -LiteralPath" : string.Empty)}."),
        "PathNotFound", ErrorCategory.ObjectNotFound, path);

    public static ErrorRecord ProfileNotFound(string reference) => Create(
        new ItemNotFoundException($"{reference}: There is no profile of this name, and no such file. {string.Join(" and ", LayerProfiles.Shipped.Select(profile => $"'{profile.Name}'"))} ship with the module; " +
            $"others are named by the path of their *{LayerProfiles.Extension} file."),
        "ProfileNotFound", ErrorCategory.ObjectNotFound, reference);

    public static ErrorRecord LedgerNotFound(LayerFile file) => Create(
        new ItemNotFoundException($"{file.Path}: There is no ledger of this file. Export-LayerLedger writes {Path.GetFileName(LayerLedger.FindPath(file.Path))} beside it; others are named with -LedgerPath."),
        "LedgerNotFound", ErrorCategory.ObjectNotFound, file);

    public static ErrorRecord PathUnusable(string path, Exception error) => Create(
        new ArgumentException($"{path}: This path cannot be used: {error.Message}", error), "PathUnusable", ErrorCategory.InvalidArgument, path);

    public static ErrorRecord NotAFilePath(string path, string provider) => Create(
        new ArgumentException($"{path}: Layered files are read and written on disk, and this path belongs to '{provider}'. Name a file on a drive."),
        "NotAFilePath", ErrorCategory.InvalidArgument, path);

    public static ErrorRecord FactsOnly(object target) => Create(
        new InvalidOperationException($"'{Name(target)}' is a plain copy of facts that came from another process or from a file, so it cannot be edited, saved or drawn. " +
            "Run the whole pipeline, from Get-LayerFile on, on the machine with the file."),
        "FactsOnly", ErrorCategory.InvalidOperation, target);

    public static ErrorRecord NotALayer(string command, object target) => Create(
        new ArgumentException($"{command} takes layered files from Get-LayerFile or layers from Get-Layer, and '{Name(target)}' is neither. " +
            $"Begin with Get-LayerFile: Get-LayerFile hero.psd | {command} ..."),
        "NotALayer", ErrorCategory.InvalidType, target);

    public static ErrorRecord InputMissing(string command) => Create(
        new ArgumentException($"{command} works on what comes through the pipeline, and nothing came. Begin with Get-LayerFile: Get-LayerFile hero.psd | {command} ..."),
        "InputMissing", ErrorCategory.InvalidArgument, target: null);

    public static ErrorRecord LayerWithoutFile(object target) => Create(
        new InvalidOperationException($"The layer '{Name(target)}' was removed from its file. Choose layers anew with Get-Layer."),
        "LayerWithoutFile", ErrorCategory.InvalidOperation, target);

    public static ErrorRecord LayerNotFound(string file, string layer, object target) => Create(
        new ItemNotFoundException($"{file}: There is no layer {layer}. Format-LayerTree shows the layers with their numbers and names."),
        "LayerNotFound", ErrorCategory.ObjectNotFound, target);

    public static ErrorRecord LayerAmbiguous(string file, string text, IEnumerable<Layer> found, object target) => Create(
        new ArgumentException($"{file}: '{text}' could be any of the layers {string.Join(", ", found.Select(layer => FormattableString.Invariant($"{layer.LayerNumber} ({Name(layer)})")))}. " +
            "Give the path or the number of one."),
        "LayerAmbiguous", ErrorCategory.InvalidArgument, target);

    public static ErrorRecord SelectionMissing(string command, object target) => Create(
        new ArgumentException($"{target}: {command} needs to be told which layers: add -Name, -LayerPath, -LiteralLayerPath, -LayerNumber, -Kind or -Side, or pipe layers from Get-Layer."),
        "SelectionMissing", ErrorCategory.InvalidArgument, target);

    public static ErrorRecord ScriptFailed(string file, string layer, RuntimeException error, object target) => Create(
        new InvalidOperationException($"{file}: The script block failed for the layer '{Name(layer)}': {error.Message.TrimEnd('.')}. Nothing in this file was changed.", error),
        "ScriptFailed", ErrorCategory.InvalidOperation, target);

    public static ErrorRecord DestinationTaken(string destination, string first, object target) => Create(
        new InvalidOperationException($"{target}: {destination} is the destination of {first} already. Give each file one of its own; -Force does not lift this."),
        "DestinationTaken", ErrorCategory.ResourceExists, target);

    public static ErrorRecord FileExists(string path) => Create(
        new IOException($"{path}: The file exists, and a new one is never written over it. Name another file."), "FileExists", ErrorCategory.ResourceExists, path);

    public static ErrorRecord DestinationExists(string path) => Create(
        new IOException($"{path}: The file exists. Use -Force to overwrite it, or name another destination."), "DestinationExists", ErrorCategory.ResourceExists, path);

    public static ErrorRecord NotALayeredName(string path) => Create(
        new ArgumentException($"{path}: A layered file's name ends in .psd, or in .psb for more than 30,000 px a side. Name it so."), "NotALayeredName", ErrorCategory.InvalidArgument, path);

    public static ErrorRecord TooLargeForPsd(string path, int largest) => Create(
        new ArgumentException(FormattableString.Invariant($"{path}: A PSD holds at most {largest} px a side. Let the name end in .psb.")), "TooLargeForPsd", ErrorCategory.InvalidArgument, path);

    public static ErrorRecord OtherFormat(string destination, LayerFile file) => Create(
        new ArgumentException($"{file.Path}: The file is a {Views.Describe(file.Format)}, and saving does not change that. Let {destination} end in .{file.Format.ToString().ToLowerInvariant()}."),
        "OtherFormat", ErrorCategory.InvalidArgument, file);

    public static ErrorRecord RuleNotFound(string rule, IReadOnlyList<string> near) => Create(
        new ItemNotFoundException($"There is no rule '{rule}'{(near.Count > 0 ? $"; did you mean {string.Join(" or ", near)}?" : ".")} Get-Help about_LayerTools_Checks lists all rules, and the Tab key completes them."),
        "RuleNotFound", ErrorCategory.ObjectNotFound, rule);

    public static ErrorRecord RuleNotRepairable(string rule, IEnumerable<string> repairable) => Create(
        new ArgumentException($"What the rule '{rule}' finds cannot be put right safely by a command alone. {string.Join(", ", repairable)} can; for others see the remedies that Test-LayerFile gives."),
        "RuleNotRepairable", ErrorCategory.InvalidArgument, rule);

    public static ErrorRecord BadArgument(string id, string message, object? target = null) => Create(
        new ArgumentException(message), id, ErrorCategory.InvalidArgument, target);

    private static string Name(object target) => PrintableText.Of(target.ToString());

    private static ErrorRecord Create(Exception error, string id, ErrorCategory category, object? target) => new(error, id, category, target);

    private static ErrorCategory GetCategory(LayeredFileException error) => error.Kind switch
    {
        LayeredFileErrorKind.NotALayeredFile or LayeredFileErrorKind.Truncated or LayeredFileErrorKind.Damaged or LayeredFileErrorKind.BadProfile or LayeredFileErrorKind.BadLedger => ErrorCategory.InvalidData,
        LayeredFileErrorKind.LimitExceeded => ErrorCategory.LimitsExceeded,
        LayeredFileErrorKind.NotSupported => ErrorCategory.NotImplemented,
        LayeredFileErrorKind.SourceChanged or LayeredFileErrorKind.EditRefused => ErrorCategory.InvalidOperation,
        LayeredFileErrorKind.Unavailable => error.InnerException switch
        {
            FileNotFoundException or DirectoryNotFoundException => ErrorCategory.ObjectNotFound,
            UnauthorizedAccessException => ErrorCategory.PermissionDenied,
            _ => ErrorCategory.ResourceUnavailable,
        },
        _ => ErrorCategory.NotSpecified,
    };
}
