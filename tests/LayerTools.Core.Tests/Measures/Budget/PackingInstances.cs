using System.Globalization;
using LayerTools.Measures.Budget;

namespace LayerTools.Tests.Measures.Budget;

/// <summary>
/// Published packing instances, as they stand in the public collection data/rectangle of the repository fontanf/packingsolver (folders hopper2001a and
/// berkey1987); those of Hopper and Turton were compared with a second public copy.
/// C1 to C7: E. Hopper and B. Turton, "An empirical investigation of meta-heuristic and heuristic algorithms for a 2D packing problem", European Journal of
/// Operational Research 128 (2001). Each was made by cutting up one rectangle, so that the optimum is known: one page without any waste.
/// Class 1 to 3: J. Berkey and P. Wang, "Two-dimensional finite bin-packing algorithms", Journal of the Operational Research Society 38 (1987).
/// </summary>
internal static class PackingInstances
{
    public const string C1P1 = "2,12 7,12 8,6 3,6 3,5 5,5 3,12 3,7 5,7 2,6 3,2 4,2 3,4 4,4 9,2 11,2";

    public const string C1P2 = "4,1 4,5 9,4 3,5 3,9 1,4 5,3 4,1 5,5 7,2 9,3 3,13 2,8 15,4 5,4 10,6 7,2";

    public const string C1P3 = "4,14 5,2 2,2 9,7 5,5 2,5 7,7 3,5 6,5 3,2 6,2 4,6 6,3 10,3 6,3 10,3";

    public const string C4P2 = "10,14 3,13 28,5 5,8 14,9 12,14 13,10 3,17 1,5 4,1 18,4 1,1 2,6 4,14 3,18 4,14 8,17 11,5 9,12 4,7 25,8 7,5 24,9 9,14 12,19 2,4 2,7 3,4 "
        + "5,30 5,3 10,26 6,5 4,9 1,4 9,2 4,17 5,2 4,4 6,2 4,10 2,4 3,12 6,5 3,9 7,18 6,6 18,7 13,9 25,7";

    public const string C7P2 = "15,75 12,80 27,6 3,13 10,3 9,21 8,11 6,13 2,9 51,10 6,6 11,12 2,10 8,12 13,47 14,37 3,11 3,6 1,4 1,6 27,5 14,3 10,4 5,20 3,11 14,5 5,2 "
        + "7,2 12,9 2,1 12,8 5,28 8,6 35,7 7,14 10,45 4,19 13,17 62,9 36,11 38,18 4,2 9,5 8,3 30,20 6,7 36,10 27,7 17,3 6,4 11,10 5,25 7,26 10,44 19,4 8,31 33,6 11,73 8,27 "
        + "6,2 2,9 25,9 9,39 9,17 12,7 21,101 3,10 3,7 4,10 8,22 5,3 2,1 1,2 22,59 1,2 1,1 2,1 11,56 10,39 5,5 3,20 2,1 2,7 7,6 13,12 17,34 16,46 1,1 6,13 3,12 6,10 9,15 6,24 "
        + "1,1 5,7 4,1 2,13 11,9 1,6 3,16 7,11 8,15 6,10 6,21 3,9 1,4 10,7 3,3 5,15 2,4 33,8 16,5 9,12 10,11 6,3 10,11 39,8 17,113 13,36 28,8 17,7 42,9 22,57 2,1 15,9 30,8 26,7 "
        + "16,32 71,25 12,25 22,20 9,55 13,27 65,16 1,3 5,2 16,57 2,1 3,3 3,2 25,11 11,8 6,4 10,9 25,8 10,6 12,15 6,19 2,4 4,7 4,2 6,7 13,3 29,5 2,2 8,15 5,28 8,42 4,27 3,2 18,4 "
        + "17,5 2,8 2,11 1,2 3,18 17,10 7,5 3,10 5,31 19,9 7,8 10,3 11,37 1,4 6,32 1,5 12,5 7,33 2,8 6,11 9,9 4,27 10,11 38,9 5,7 6,2 3,6 6,2 32,5 12,4 16,3 72,15 14,14 2,6 3,9 12,3";

    /// <summary>Pages of 10 × 10.</summary>
    public const string Class1With20 = "5,9 4,2 10,6 5,7 6,3 10,7 1,5 3,5 6,9 2,4 6,7 7,2 8,3 4,10 4,5 10,3 8,3 7,8 8,3 8,7";

    /// <summary>Pages of 10 × 10.</summary>
    public const string Class1With20Second = "2,2 6,8 10,2 1,3 8,4 3,10 1,9 1,5 6,3 1,1 4,2 9,2 1,9 9,5 4,7 2,2 3,4 9,7 4,1 9,8";

    /// <summary>Pages of 10 × 10.</summary>
    public const string Class1With40 = "4,7 1,3 6,7 8,2 9,4 6,2 7,7 3,6 2,7 1,3 3,8 4,3 1,9 8,1 1,10 7,6 9,5 3,7 8,3 6,9 2,5 5,1 8,4 6,3 7,10 5,10 5,2 5,9 9,6 10,2 9,9 7,2 1,2 8,9 2,10 "
        + "7,2 3,10 2,7 9,4 3,1";

    /// <summary>Pages of 30 × 30.</summary>
    public const string Class2With100 = "10,4 2,10 2,4 10,10 7,2 9,10 5,6 7,5 1,7 5,3 3,9 9,4 2,10 4,3 2,2 4,9 2,8 1,1 1,7 4,4 6,10 4,6 3,10 6,9 3,6 6,7 2,9 7,7 6,4 3,10 7,8 1,2 10,2 3,9 2,10 "
        + "2,4 4,1 8,9 10,6 10,4 9,9 4,9 2,7 7,9 3,3 10,1 10,10 8,7 3,6 8,1 8,2 2,1 2,3 4,8 7,7 2,6 6,4 7,3 7,9 3,10 3,10 8,2 6,8 4,7 5,7 4,5 1,5 7,2 8,4 3,4 4,7 7,3 1,3 8,3 3,2 "
        + "5,3 6,10 3,2 4,3 1,7 9,3 9,4 1,5 1,4 9,5 6,3 9,6 5,7 7,2 2,9 6,10 4,1 10,2 3,3 6,1 4,5 6,7 4,2 4,10 4,1";

    /// <summary>Pages of 40 × 40.</summary>
    public const string Class3With60 = "5,25 26,5 8,30 30,15 5,25 34,34 21,25 20,30 27,22 15,20 3,20 22,30 10,34 22,29 19,22 8,33 9,23 18,34 8,16 33,1 19,30 9,19 23,33 22,11 13,6 16,16 27,11 19,13 "
        + "11,17 34,31 27,5 8,4 9,1 2,16 7,10 20,25 14,11 8,35 33,34 28,26 11,10 13,27 9,26 16,4 31,4 27,10 23,18 15,1 12,14 32,17 2,18 34,2 8,35 25,20 23,10 21,3 16,5 14,2 1,25 8,11";

    public static IReadOnlyList<PackSize> Parse(string text) =>
    [
        .. text.Split(' ').Select(pair => Array.ConvertAll(pair.Split(','), number => int.Parse(number, CultureInfo.InvariantCulture))).Select(sides => new PackSize(sides[0], sides[1])),
    ];
}
