using LayerTools.Checks;
using LayerTools.Checks.Rules;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Profiles;

namespace LayerTools.Edits.Repair;

/// <summary>
/// Puts right what rules find, where that is safe: no pixel changes by more than alpha 7 of 255, no part is taken for another, and nothing that is only hidden is lost. What is
/// found and not safe to repair is warned about. The chosen layers do not matter.
/// </summary>
public sealed class RepairEdit : LayerEdit
{
    /// <summary>Each rule with the repair of its findings, in the order in which they are made.</summary>
    private static readonly (string Rule, Action<RepairEdit, RepairWork, IReadOnlyList<Finding>> Repair)[] Repairs =
    [
        (nameof(GuideOffAxis), (edit, work, _) => CenterGuideRepair.Move(work, CheckRules.Find(nameof(GuideOffAxis))!.LimitIn(edit.Profile))),
        (nameof(NoCenterGuide), (_, work, _) => CenterGuideRepair.Draw(work)),
        (nameof(NameOffProfile), (_, work, findings) => NameRepair.Write(work, findings)),
        (nameof(UntrimmedName), (_, work, findings) => NameRepair.Trim(work, findings)),
        (nameof(FaintPixelsWidenBounds), (edit, work, findings) => edit.Cut(work, findings, PartSurvey.Faint)),
        (nameof(EmptyMargin), (edit, work, findings) => edit.Cut(work, findings, faintest: 0)),
    ];

    /// <summary>The rules whose findings can be put right, by name.</summary>
    public static IReadOnlyList<CheckRule> Repairable { get; } = [.. CheckRules.All.Where(rule => Array.Exists(Repairs, repair => repair.Rule == rule.Id))];

    /// <summary>Says what is wrong.</summary>
    public required LayerProfile Profile { get; init; }

    /// <summary>The rules to go by, out of <see cref="Repairable"/>.</summary>
    public IReadOnlyList<CheckRule> Rules { get; init; } = Repairable;

    /// <summary>Ends the work early.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <inheritdoc/>
    /// <exception cref="OperationCanceledException">The work was ended early; nothing has changed.</exception>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var findings = LayerFileChecker.Check(file, Profile, Rules, Cancellation).ToLookup(finding => finding.Rule);
        using var reader = new PixelReader(file);
        var work = new RepairWork(file, reader);
        foreach (var (rule, repair) in Repairs)
        {
            if (findings.Contains(rule)) repair(this, work, [.. findings[rule]]);
        }

        return work.ToPlan();
    }

    private void Cut(RepairWork work, IReadOnlyList<Finding> findings, byte faintest)
    {
        foreach (var finding in findings) MarginRepair.Cut(work, work.LayerOf(finding), faintest, Cancellation);
    }
}
