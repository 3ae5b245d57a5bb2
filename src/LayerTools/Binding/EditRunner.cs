using System.Globalization;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Binding;

/// <summary>Takes a plan through the questions that a cmdlet has to ask: shows it, asks, or applies it.</summary>
/// <param name="command">The cmdlet.</param>
/// <param name="action">What the edit does, for a question: "Rename layers".</param>
internal sealed class EditRunner(LayerToolsCommand command, string action)
{
    private const int StepsInAQuestion = 5;

    /// <summary>Runs an edit over layers of one file.</summary>
    /// <returns>The layers that the edit made, where it passes those on.</returns>
    public IReadOnlyList<Layer>? Run(LayerEdit edit, LayerFile file, IReadOnlyList<Layer> layers)
    {
        var plan = edit.Plan(file, layers);
        command.WriteWarnings(file.Name, plan.Warnings);
        if (plan.Steps.Count == 0) command.WriteVerbose($"{file.Path}: Nothing to change.");
        if (command.IsWhatIf)
        {
            foreach (var step in plan.Steps) command.ShouldProcess(Describe(file, step), Describe(file, step), action);
            return null;
        }

        if (plan.Steps.Count > 0)
        {
            var description = Describe(file, plan);
            if (!command.ShouldProcess(description, description, action)) return null;
        }

        plan.Apply();
        return plan.Results;
    }

    /// <summary>Runs an edit over layers of any number of files, then passes on the layers, or in their place what the edit made.</summary>
    /// <param name="layers">All layers that came in, in their order.</param>
    /// <param name="runFile">Edits one file; gives the layers to pass on instead, or null.</param>
    public void RunAll(IReadOnlyList<Layer> layers, Func<LayerFile, IReadOnlyList<Layer>, IReadOnlyList<Layer>?> runFile)
    {
        // An edit can take layers out of their file, so who belongs where is noted before.
        var files = layers.Select(layer => layer.GetFile()!).ToList();
        var done = new Dictionary<LayerFile, IReadOnlyList<Layer>?>();
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) command.Try(file, () => done.Add(file, runFile(file, ofFile)));
        var passedOn = new HashSet<LayerFile>();
        for (var i = 0; i < layers.Count; i++)
        {
            if (!done.TryGetValue(files[i], out var results)) continue;
            if (results is null) command.WriteObject(layers[i]);
            else if (passedOn.Add(files[i])) command.WriteObject(results, enumerateCollection: true);
        }
    }

    private static string Describe(LayerFile file, EditPlan plan)
    {
        var lines = plan.Steps.Take(StepsInAQuestion).Select(step => Describe(file, step)).ToList();
        var more = plan.Steps.Count - lines.Count;
        if (more > 0) lines.Add($"and {more.ToString(CultureInfo.InvariantCulture)} more");
        return string.Join(Environment.NewLine, lines);
    }

    private static string Describe(LayerFile file, EditStep step)
    {
        var place = step.LayerPath.Length > 0 ? $"{file.Path}: {step.LayerPath}" : file.Path;
        return PrintableText.Of(step switch
        {
            { Property: "Layer", Old: null } => $"{file.Path}: new layer '{step.New}'",
            { Property: "Layer" } => $"{file.Path}: remove layer '{step.LayerPath}'",
            _ => $"{place}: {step.Property} '{step.Old}' -> '{step.New}'",
        });
    }
}
