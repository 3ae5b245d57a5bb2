using LayerTools.Ledgers;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>Brings ledgers up to date for a cmdlet, after asking.</summary>
/// <param name="command">The cmdlet.</param>
/// <param name="rules">How states follow.</param>
/// <param name="cancellation">Stops the work.</param>
internal sealed class LedgerWriter(LayerToolsCommand command, LedgerRules rules, CancellationToken cancellation)
{
    /// <summary>Writes the ledger of one file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="path">Where to write.</param>
    /// <param name="ledgers">What is known so far.</param>
    /// <param name="action">What is done, for a question.</param>
    /// <param name="update">What is set; gets the parts of the file.</param>
    /// <returns>Whether the ledger is as wanted, also if it was so before.</returns>
    public bool Write(LayerFile file, string path, IReadOnlyList<LayerLedger> ledgers, string action, Func<LedgerParts, LedgerUpdate> update)
    {
        try
        {
            using var parts = new LedgerParts(file, rules.Options, cancellation);
            var join = new LedgerJoin(parts, ledgers, rules);
            LedgerReference.WriteClashes(command, file, join.Clashes);
            var wanted = update(parts);
            command.WriteWarnings(file.Name, join.Rows.Where(row => row.Evidence == LedgerEvidence.Ambiguous && !wanted.Chosen.Contains(row.Layer!))
                .Select(row => $"'{row.Layer!.LayerPath}' could be any of the ledger's {string.Join(", ", row.Candidates.Select(candidate => $"'{candidate}'"))}; set its state with Set-LayerStatus."));
            var ledger = wanted.Create(parts, join, rules);
            if (!command.ShouldProcess(path, action)) return false;
            if (!LedgerFile.Write(ledger, path)) command.WriteVerbose($"{path}: The ledger says the same already and was left as it is.");
            return true;
        }
        catch (OperationCanceledException)
        {
            throw new System.Management.Automation.PipelineStoppedException();
        }
    }
}
