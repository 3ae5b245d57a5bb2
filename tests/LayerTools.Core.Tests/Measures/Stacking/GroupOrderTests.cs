using CsCheck;
using LayerTools.Measures.Stacking;
using LayerTools.Model;
using LayerTools.Tests.Edits;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Measures.Stacking;

public class GroupOrderTests
{
    private static readonly Gen<int[]> SmallStack = Gen.Int[0, 4].Array[0, 9];

    [Fact]
    public void The_run_that_stays_is_as_long_as_any_by_brute_force() => SmallStack.Sample(numbers =>
    {
        var run = GroupOrder.FindLongestRun(numbers);
        Assert.Equal(run.OrderBy(place => place), run);
        Assert.True(IsSorted([.. run.Select(place => numbers[place])]));
        var longest = Enumerable.Range(0, 1 << numbers.Length).Select(chosen => numbers.Where((_, i) => (chosen >> i & 1) == 1).ToList()).Where(IsSorted).Max(chosen => chosen.Count);
        Assert.Equal(longest, run.Count);
    });

    // Breadth first over all stacks that single moves lead to.
    [Fact]
    public void No_order_takes_fewer_moves_by_brute_force() => Gen.Int[0, 4].Array[0, 6].Sample(numbers =>
    {
        var group = Group("Body", [.. numbers.Select(number => Pixel(OrderEditTests.Words[number]))]);
        var order = GroupOrder.Of(group, new StackRanks(OrderEditTests.Profile));
        Assert.True(IsSorted([.. order.Sorted.Select(block => block.Rank)]));
        Assert.Equal(CountMoves(numbers), order.Moved.Count);
    }, iter: 60);

    private static bool IsSorted(IReadOnlyList<int> numbers) => numbers.Zip(numbers.Skip(1), (one, next) => one <= next).All(isSorted => isSorted);

    private static int CountMoves(int[] start)
    {
        var seen = new HashSet<string>();
        var stacks = new List<int[]> { start };
        for (var moves = 0; ; moves++)
        {
            if (stacks.Exists(stack => IsSorted(stack))) return moves;
            stacks = [.. stacks.SelectMany(Move).Where(stack => seen.Add(string.Join(",", stack)))];
        }
    }

    private static IEnumerable<int[]> Move(int[] stack)
    {
        for (var from = 0; from < stack.Length; from++)
        {
            for (var to = 0; to < stack.Length; to++)
            {
                var moved = stack.ToList();
                moved.RemoveAt(from);
                moved.Insert(to, stack[from]);
                yield return [.. moved];
            }
        }
    }
}
