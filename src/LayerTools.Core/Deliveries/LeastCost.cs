namespace LayerTools.Deliveries;

/// <summary>
/// The assignment of rows to columns whose sum of costs is the least of all, by shortest augmenting paths: H. W. Kuhn, "The Hungarian method for the assignment problem",
/// Naval Research Logistics Quarterly 2, 1955, in the form with potentials that takes rows² × columns steps.
/// </summary>
internal static class LeastCost
{
    /// <summary>Assigns every row to a column of its own.</summary>
    /// <param name="costs">Finite numbers; at least as many columns as rows.</param>
    /// <returns>The column of each row.</returns>
    public static int[] Assign(double[,] costs)
    {
        var (rows, columns) = (costs.GetLength(0), costs.GetLength(1));
        if (rows > columns) throw new ArgumentException("There are more rows than columns.", nameof(costs));

        // Row and column 0 stand for none.
        var rowPotentials = new double[rows + 1];
        var columnPotentials = new double[columns + 1];
        var rowOf = new int[columns + 1];
        var before = new int[columns + 1];
        for (var row = 1; row <= rows; row++)
        {
            rowOf[0] = row;
            var column = 0;
            var least = new double[columns + 1];
            var visited = new bool[columns + 1];
            least.AsSpan().Fill(double.PositiveInfinity);
            do
            {
                visited[column] = true;
                column = Visit(column, least, visited);
            }
            while (rowOf[column] != 0);

            for (; column != 0; column = before[column]) rowOf[column] = rowOf[before[column]];
        }

        var assigned = new int[rows];
        for (var column = 1; column <= columns; column++)
        {
            if (rowOf[column] != 0) assigned[rowOf[column] - 1] = column - 1;
        }

        return assigned;

        int Visit(int from, double[] least, bool[] visited)
        {
            var (row, nearest, step) = (rowOf[from], 0, double.PositiveInfinity);
            for (var column = 1; column <= columns; column++)
            {
                if (visited[column]) continue;
                var reduced = costs[row - 1, column - 1] - rowPotentials[row] - columnPotentials[column];
                if (reduced < least[column]) (least[column], before[column]) = (reduced, from);
                if (least[column] < step) (step, nearest) = (least[column], column);
            }

            for (var column = 0; column <= columns; column++)
            {
                if (visited[column])
                {
                    rowPotentials[rowOf[column]] += step;
                    columnPotentials[column] -= step;
                }
                else
                {
                    least[column] -= step;
                }
            }

            return nearest;
        }
    }
}
