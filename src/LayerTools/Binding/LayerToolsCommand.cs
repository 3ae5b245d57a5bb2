using System.Management.Automation;
using LayerTools.Errors;
using LayerTools.Names;

namespace LayerTools.Binding;

/// <summary>What all cmdlets of the module share: stopping promptly and telling trouble as error records.</summary>
public abstract class LayerToolsCommand : PSCmdlet
{
    private protected LayerToolsCommand()
    {
    }

    /// <summary>Whether the user asked only to see what would happen.</summary>
    internal bool IsWhatIf =>
        MyInvocation.BoundParameters.TryGetValue("WhatIf", out var given)
            ? LanguagePrimitives.IsTrue(given)
            : LanguagePrimitives.IsTrue(GetVariableValue("WhatIfPreference"));

    /// <summary>Ends a cancelled command. Returning instead would still run the end of the pipeline, which may write.</summary>
    internal void ThrowIfStopping()
    {
        if (Stopping) throw new PipelineStoppedException();
    }

    /// <summary>Does one item of work; trouble with it becomes an error record, and the next item follows.</summary>
    /// <returns>Whether the work was done.</returns>
    internal bool Try(object? target, Action work)
    {
        ThrowIfStopping();
        try
        {
            work();
            return true;
        }
        catch (LayeredFileException error)
        {
            WriteFailure(target, ErrorRecords.FromCore(error, target));
        }
        catch (RefusedException refused)
        {
            WriteFailure(target, refused.Record);
        }

        return false;
    }

    /// <summary>Tells that an item could not be worked on.</summary>
    private protected virtual void WriteFailure(object? target, ErrorRecord record) => WriteError(record);

    /// <summary>Puts out a file on disk as the shell itself does, so that its table shows folder and size and the next command finds it.</summary>
    internal void WriteFile(string path, PSNoteProperty? more = null)
    {
        foreach (var item in InvokeProvider.Item.Get([@"Microsoft.PowerShell.Core\FileSystem::" + path], force: true, literalPath: true))
        {
            if (more is not null) item.Properties.Add(more);
            WriteObject(item);
        }
    }

    /// <summary>Writes warnings that an operation gave, each naming its file.</summary>
    internal void WriteWarnings(string fileName, IEnumerable<string> warnings)
    {
        foreach (var warning in warnings) WriteWarning(PrintableText.Of(warning.Contains(fileName) ? warning : $"{fileName}: {warning}"));
    }
}
