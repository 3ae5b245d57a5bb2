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

    /// <summary>Asks the question.</summary>
    /// <returns>The findings, front to back.</returns>
    internal abstract IEnumerable<Finding> Check(CheckContext context);

    /// <summary>The limit that holds for a file.</summary>
    private protected double LimitFor(CheckContext context) =>
        context.Profile.Rules.TryGetValue(Id, out var setting) && setting.Limit is { } limit ? limit : DefaultLimit!.Value;
}
