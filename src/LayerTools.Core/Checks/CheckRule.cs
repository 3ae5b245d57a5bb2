using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Checks;

/// <summary>One question that is asked of a file.</summary>
public abstract class CheckRule
{
    private protected CheckRule()
    {
    }

    /// <summary>What the rule is called, in Pascal case: <c>OddCanvasWidth</c>.</summary>
    public abstract string Id { get; }

    /// <summary>What is wrong where it finds something, in a few words.</summary>
    public abstract string Title { get; }

    /// <summary>Why that matters and how it is measured, in a sentence or two; says where it is common practice.</summary>
    public abstract string Reason { get; }

    /// <summary>How bad its findings are, unless the profile says otherwise.</summary>
    public abstract Severity DefaultSeverity { get; }

    /// <summary>The limit unless the profile says otherwise, in <see cref="LimitUnit"/>; null for a rule without one.</summary>
    public virtual double? DefaultLimit => null;

    /// <summary>The unit of the limit: <c>px</c>, <c>%</c>, <c>levels</c> ...; null for a rule without one.</summary>
    public virtual string? LimitUnit => null;

    /// <summary>Whether the question needs the pixels of the parts.</summary>
    public virtual bool NeedsPixels => false;

    /// <summary>How bad the rule's findings are for a profile; <see cref="Severity.None"/> where the rule is not asked.</summary>
    public Severity SeverityIn(LayerProfile profile) => profile.Rules.TryGetValue(Id, out var setting) && setting.Severity is { } severity ? severity : DefaultSeverity;

    /// <summary>The limit that holds for a profile, in <see cref="LimitUnit"/>.</summary>
    /// <exception cref="InvalidOperationException">The rule has no limit.</exception>
    internal double LimitIn(LayerProfile profile) =>
        profile.Rules.TryGetValue(Id, out var setting) && setting.Limit is { } limit ? limit : DefaultLimit ?? throw new InvalidOperationException($"{Id} has no limit.");

    /// <inheritdoc/>
    public override string ToString() => Id;

    /// <summary>Asks the question.</summary>
    /// <returns>The findings, front to back.</returns>
    internal abstract IEnumerable<Finding> Check(CheckContext context);

    /// <summary>Something that is wrong with the whole file.</summary>
    /// <param name="context">The file.</param>
    /// <param name="message">What is wrong, as a sentence; names in it come from the file as they are.</param>
    /// <param name="remedy">What to do: a command from <see cref="Remedy"/> where there is one, else a sentence.</param>
    /// <param name="measured">What was measured, with its unit.</param>
    /// <param name="limit">What it should be, with its unit.</param>
    private protected Finding Find(CheckContext context, string message, string remedy, string? measured = null, string? limit = null) => new()
    {
        Severity = SeverityIn(context.Profile),
        Rule = Id,
        Message = message,
        Measured = measured,
        Limit = limit,
        Remedy = remedy,
        FilePath = context.File.Path,
    };

    /// <summary>Something that is wrong with one layer; otherwise as for the whole file.</summary>
    private protected Finding Find(CheckContext context, Layer layer, string message, string remedy, string? measured = null, string? limit = null) =>
        Find(context, message, remedy, measured, limit) with { LayerPath = layer.LayerPath, LayerNumber = layer.LayerNumber };

    /// <summary>The limit that holds for a file.</summary>
    private protected double LimitFor(CheckContext context) => LimitIn(context.Profile);
}
