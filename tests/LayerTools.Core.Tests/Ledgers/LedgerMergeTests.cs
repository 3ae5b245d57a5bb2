using CsCheck;
using LayerTools.Ledgers;
using LayerTools.Measures;
using Xunit;

namespace LayerTools.Tests.Ledgers;

public class LedgerMergeTests
{
    /// <summary>Few paths, ids and times, so that many entries are about one part and many were set at one time.</summary>
    private static readonly Gen<LedgerEntry[]> Ledgers = LedgerTexts.Entries(["Arm", "Body", "Head"], ids: 2, minutes: 3).Array[0, 8].Select(entries => LedgerMerge.Merge(entries).ToArray());

    [Fact]
    public void The_order_of_ledgers_does_not_matter() => Gen.Select(Ledgers, Ledgers).Sample((one, other) => Same(Merge(one, other), Merge(other, one)));

    [Fact]
    public void What_was_joined_before_does_not_matter() => Gen.Select(Ledgers, Ledgers, Ledgers).Sample((a, b, c) => Same(Merge(Merge(a, b), c), Merge(a, Merge(b, c))));

    [Fact]
    public void A_ledger_joined_with_itself_is_the_same() => Ledgers.Sample(ledger => Same(Merge(ledger, ledger), ledger));

    [Fact]
    public void The_entry_that_was_set_last_holds() => Gen.Select(Ledgers, Ledgers).Sample((one, other) =>
        Merge(one, other).All(winner => one.Concat(other).Where(entry => LedgerKey.Of(entry) == LedgerKey.Of(winner)).All(entry => (entry.When ?? DateTime.MinValue) <= (winner.When ?? DateTime.MinValue))));

    [Fact]
    public void Nobody_clashes_with_himself_or_with_what_nobody_said()
    {
        var entry = new LedgerEntry { LayerPath = "Arm", Pixels = string.Empty, Mask = string.Empty, Look = string.Empty, Painted = default, State = PartState.Done, Who = "anna", When = LedgerFigure.Monday };
        Assert.Empty(LedgerMerge.Choose([entry, entry with { State = PartState.Open, When = LedgerFigure.Monday.AddDays(-1) }]).Clashing);
        Assert.Empty(LedgerMerge.Choose([entry, entry with { State = PartState.Open, Who = string.Empty, When = null }]).Clashing);
        Assert.Empty(LedgerMerge.Choose([entry, entry with { Who = "ben" }]).Clashing);
        Assert.Equal("ben", Assert.Single(LedgerMerge.Choose([entry, entry with { State = PartState.Open, Who = "ben", When = LedgerFigure.Monday.AddDays(-1) }]).Clashing).Who);
    }

    private static LedgerEntry[] Merge(params LedgerEntry[][] ledgers) => [.. LedgerMerge.Merge(ledgers.SelectMany(ledger => ledger))];

    private static bool Same(LedgerEntry[] one, LedgerEntry[] other) => one.Length == other.Length && new HashSet<LedgerEntry>(one).SetEquals(other);
}
