namespace LayerTools.Deliveries;

/// <summary>
/// The assignment of rows to columns whose sum of costs is the least of all: H. W. Kuhn, "The Hungarian method for the assignment problem", Naval Research Logistics
/// Quarterly 2, 1955, by shortest augmenting paths with potentials. Only pairs that are possible are held, and a row may stay alone at no cost, so that memory goes with the pairs.
/// </summary>
internal sealed class LeastCost
{
    private const int None = -1;

    private readonly IReadOnlyList<IReadOnlyList<CostedPair>> pairs;
    private readonly double[] rowPotentials;
    private readonly double[] columnPotentials;
    private readonly int[] columnOf;
    private readonly int[] rowOf;
    private readonly double[] distances;
    private readonly int[] before;
    private readonly List<int> reached = [];
    private readonly HashSet<int> settled = [];
    private readonly SortedSet<(double Distance, int Column)> waiting = [];

    private LeastCost(IReadOnlyList<IReadOnlyList<CostedPair>> pairs, int columns)
    {
        this.pairs = pairs;
        rowPotentials = [.. pairs.Select(ofRow => Math.Min(0, ofRow.Count == 0 ? 0 : ofRow.Min(pair => pair.Cost)))];
        columnPotentials = new double[columns];
        columnOf = new int[pairs.Count];
        rowOf = new int[columns];
        distances = new double[columns];
        before = new int[columns];
        columnOf.AsSpan().Fill(None);
        rowOf.AsSpan().Fill(None);
        distances.AsSpan().Fill(double.PositiveInfinity);
    }

    /// <summary>Assigns rows to columns, each to one at most.</summary>
    /// <param name="pairs">The columns that each row may be assigned to and what that costs: finite numbers, of which only those below 0 are better than staying alone.</param>
    /// <param name="columns">How many columns there are.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The column of each row, or -1 for none.</returns>
    public static int[] Assign(IReadOnlyList<IReadOnlyList<CostedPair>> pairs, int columns, CancellationToken cancellation = default)
    {
        var assignment = new LeastCost(pairs, columns);
        for (var row = 0; row < pairs.Count; row++)
        {
            cancellation.ThrowIfCancellationRequested();
            assignment.Add(row);
        }

        return assignment.columnOf;
    }

    /// <summary>Gives a row its place along the shortest path that ends at a free column or at a row that rather stays alone.</summary>
    private void Add(int first)
    {
        var (aloneRow, alone) = (first, double.PositiveInfinity);
        var (row, distance) = (first, 0.0);
        int end;
        while (true)
        {
            var stay = distance - rowPotentials[row];
            if (stay < alone) (alone, aloneRow) = (stay, row);
            foreach (var pair in pairs[row]) Reach(row, pair, distance);
            var (nearest, column) = waiting.Count > 0 ? waiting.Min : (double.PositiveInfinity, None);
            if (alone <= nearest)
            {
                (end, distance) = (None, alone);
                break;
            }

            waiting.Remove((nearest, column));
            distance = nearest;
            if (rowOf[column] == None)
            {
                end = column;
                break;
            }

            settled.Add(column);
            row = rowOf[column];
        }

        rowPotentials[first] += distance;
        foreach (var column in settled)
        {
            columnPotentials[column] -= distance - distances[column];
            rowPotentials[rowOf[column]] += distance - distances[column];
        }

        Augment(first, end == None ? aloneRow : before[end], end);
        Forget();
    }

    private void Reach(int row, CostedPair pair, double distance)
    {
        if (settled.Contains(pair.Column)) return;
        var reach = distance + pair.Cost - rowPotentials[row] - columnPotentials[pair.Column];
        if (reach >= distances[pair.Column]) return;
        if (double.IsPositiveInfinity(distances[pair.Column])) reached.Add(pair.Column);
        else waiting.Remove((distances[pair.Column], pair.Column));
        (distances[pair.Column], before[pair.Column]) = (reach, row);
        waiting.Add((reach, pair.Column));
    }

    private void Augment(int first, int row, int column)
    {
        while (true)
        {
            var given = columnOf[row];
            columnOf[row] = column;
            if (column != None) rowOf[column] = row;
            if (row == first) return;
            (row, column) = (before[given], given);
        }
    }

    private void Forget()
    {
        foreach (var column in reached) distances[column] = double.PositiveInfinity;
        reached.Clear();
        settled.Clear();
        waiting.Clear();
    }
}
