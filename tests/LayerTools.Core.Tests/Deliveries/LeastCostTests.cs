using CsCheck;
using LayerTools.Deliveries;
using Xunit;

namespace LayerTools.Core.Tests.Deliveries;

public class LeastCostTests
{
    private static readonly Gen<CostedPair[][]> Problems = Gen.Int[1, 5].SelectMany(columns =>
        Gen.Select(Gen.Bool, Gen.Int[-9, 3]).Array[columns].Select(ToPairs).Array[0, 5]);

    [Fact]
    public void Finds_what_trying_everything_finds() => Problems.Sample(
        pairs =>
        {
            var assigned = Assign(pairs, 5);
            var taken = assigned.Where(column => column >= 0).ToList();
            return taken.Count == taken.Distinct().Count() && Sum(pairs, assigned) == Least(pairs, 0, []);
        },
        iter: 5000);

    [Fact]
    public void Gives_up_a_partner_who_is_needed_more_elsewhere() =>
        Assert.Equal([1, 0], Assign([[new(0, -5), new(1, -4)], [new(0, -5)]], 2));

    [Fact]
    public void Lets_the_weaker_of_two_stay_alone() => Assert.Equal([-1, 0], Assign([[new(0, -1)], [new(0, -2)]], 1));

    [Fact]
    public void Leaves_alone_what_has_no_pair() => Assert.Equal([-1, -1], Assign([[], [new(0, 0.5)]], 1));

    private static int[] Assign(CostedPair[][] pairs, int columns) => LeastCost.Assign(pairs, columns, TestContext.Current.CancellationToken);

    private static CostedPair[] ToPairs((bool IsPossible, int Cost)[] row) => [.. row.Select((cell, column) => (cell, column)).Where(item => item.cell.IsPossible).Select(item => new CostedPair(item.column, item.cell.Cost))];

    private static double Sum(CostedPair[][] pairs, int[] assigned) => assigned.Select((column, row) => column < 0 ? 0 : pairs[row].Single(pair => pair.Column == column).Cost).Sum();

    private static double Least(CostedPair[][] pairs, int row, HashSet<int> taken)
    {
        if (row == pairs.Length) return 0;
        var least = Least(pairs, row + 1, taken);
        foreach (var pair in pairs[row].Where(pair => !taken.Contains(pair.Column))) least = Math.Min(least, pair.Cost + Least(pairs, row + 1, [.. taken, pair.Column]));
        return least;
    }
}
