using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>Takes the rows of one part after the other and finds out all that is asked about it in one pass. Memory goes with the width of a row and the covered area.</summary>
/// <param name="canvas">The canvas.</param>
/// <param name="memory">What the coverage of all parts may take.</param>
internal sealed class PartScanner(Bounds canvas, SurveyMemory memory)
{
    private readonly AlphaRow alphas = new();
    private readonly CoverageRows coverage = new(memory);
    private readonly RegionRows islands = new(IslandFinder.MostBoxes);
    private readonly RegionRows holes = new(IslandFinder.MostBoxes);
    private Bounds painted;
    private Bounds seen;
    private long paintedArea;
    private long seenArea;
    private long outsideArea;
    private double weight;
    private double moment;
    private double downMoment;
    private int lastRow;

    /// <summary>Begins a part.</summary>
    public void Restart()
    {
        coverage.Restart();
        islands.Restart();
        holes.Restart();
        painted = seen = Bounds.Empty;
        paintedArea = seenArea = outsideArea = 0;
        weight = moment = downMoment = 0;
    }

    /// <summary>Adds a row.</summary>
    /// <param name="y">The row, canvas px, below all rows before.</param>
    /// <param name="left">The column of its first pixel, canvas px.</param>
    /// <param name="alpha">Its alpha; all before and after is clear.</param>
    public void Add(int y, int left, ReadOnlySpan<byte> alpha)
    {
        alphas.Read(alpha);
        if (alphas.IsClear) return;
        var first = left + alphas.First;
        var inRow = AddBox(ref painted, y, first, alphas.Painted);
        paintedArea += inRow;
        outsideArea += y < canvas.Top || y >= canvas.Bottom ? inRow : inRow - CountInside(first, alphas.Painted);
        weight += alphas.Weight;
        moment += alphas.Moment + (left * (double)alphas.Weight);
        downMoment += y * (double)alphas.Weight;
        coverage.Add(y, first, alphas.Covering);
        AddHoles(y, first);
        var inSeen = AddBox(ref seen, y, first, alphas.Seen);
        seenArea += inSeen;
        if (inSeen > 0) AddIslands(y, first);
        lastRow = y;
    }

    /// <summary>What the rows of the part say.</summary>
    public PartSurvey Complete(Layer layer, LayerRole role)
    {
        if (!painted.IsEmpty) CloseHoles(lastRow + 1);
        return new PartSurvey
        {
            Layer = layer,
            Role = role,
            Painted = painted,
            Seen = seen,
            PaintedArea = paintedArea,
            FaintArea = paintedArea - seenArea,
            OutsideArea = outsideArea,
            CenterX = (moment / weight) + 0.5,
            CenterY = (downMoment / weight) + 0.5,
            Islands = islands.Complete(),
            IslandCount = islands.Count,
            Holes = holes.Complete(),
            HoleCount = holes.Count,
            HoleArea = holes.Area,
            Coverage = coverage.Complete(),
        };
    }

    /// <summary>Widens a box by a row's bits; how many there are.</summary>
    private static long AddBox(ref Bounds box, int y, int left, ReadOnlySpan<ulong> bits)
    {
        var (from, to, count) = (int.MaxValue, 0, 0L);
        for (var i = 0; i < bits.Length; i++)
        {
            var word = bits[i];
            if (word == 0) continue;
            count += WordBits.Count(word);
            if (from == int.MaxValue) from = (i * WordBits.WordLength) + WordBits.FindFirst(word);
            to = i + 1;
        }

        if (count > 0) box = box.Union(new Bounds(left + from, y, left + ((to - 1) * WordBits.WordLength) + WordBits.FindLast(bits[to - 1]) + 1, y + 1));
        return count;
    }

    private long CountInside(int left, ReadOnlySpan<ulong> bits)
    {
        var end = bits.Length * WordBits.WordLength;
        return WordBits.Count(bits, Math.Min(Math.Max(canvas.Left - left, 0), end), Math.Min(Math.Max(canvas.Right - left, 0), end));
    }

    private void AddIslands(int y, int left)
    {
        islands.BeginRow(y);
        var end = alphas.Seen.Length * WordBits.WordLength;
        for (var from = WordBits.FindSet(alphas.Seen, 0); from < end;)
        {
            var to = WordBits.FindClear(alphas.Seen, from);
            islands.Add(left + from, left + to);
            from = WordBits.FindSet(alphas.Seen, to);
        }
    }

    /// <summary>What is not solid. A region that reaches the outside, or has a clear pixel, is no hole.</summary>
    private void AddHoles(int y, int left)
    {
        var isFirst = painted.Top == y;
        if (!isFirst && y > lastRow + 1) CloseHoles(lastRow + 1);
        if (isFirst || y > lastRow + 2) CloseHoles(y - 1);
        holes.BeginRow(y);
        var solid = alphas.Solid;
        var end = solid.Length * WordBits.WordLength;
        var from = int.MinValue;
        for (var to = WordBits.FindSet(solid, 0); to < end; to = WordBits.FindSet(solid, from))
        {
            if (from == int.MinValue) holes.Add(int.MinValue / 2, left + to, isOpen: true);
            else holes.Add(left + from, left + to, isOpen: WordBits.Count(alphas.Seen, from, to) < to - from);
            from = WordBits.FindClear(solid, to);
        }

        holes.Add(from == int.MinValue ? int.MinValue / 2 : left + from, int.MaxValue / 2, isOpen: true);
    }

    /// <summary>A row without paint: all that meets it is open.</summary>
    private void CloseHoles(int y)
    {
        holes.BeginRow(y);
        holes.Add(int.MinValue / 2, int.MaxValue / 2, isOpen: true);
    }
}
