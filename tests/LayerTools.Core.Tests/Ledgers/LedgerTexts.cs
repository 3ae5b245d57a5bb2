using CsCheck;
using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Tests.Ledgers;

/// <summary>Invented ledgers.</summary>
internal static class LedgerTexts
{
    private static readonly Gen<string> Words = AnyOf("", "anna", "足ひれ", "a \"b\" \\ /", "🐟 two\nlines\t", "naïve", "\u001b[31m");

    private static readonly Gen<string> Hashes = AnyOf("", new string('0', 64), string.Concat(Enumerable.Repeat("09af", 16)));

    public static Gen<LedgerEntry> Entries(string[] paths, int ids, int minutes) => Gen.Select(
            Gen.Select(Gen.Int[0, paths.Length - 1], Gen.Int[0, ids], AnyOf(PartState.Open, PartState.Done, PartState.Recheck), AnyOf(Mark.None, Mark.Green, (Mark)11)),
            Gen.Select(Words, Words, Gen.Int[0, minutes]),
            Gen.Select(Hashes, Hashes, Hashes),
            Gen.Select(Gen.Int[-1_000_000_000, 1_000_000_000], Gen.Int[-5, 5], Gen.Int[0, 1_000_000_000], Gen.Int[0, 9]))
        .Select((part, said, hashes, place) => new LedgerEntry
        {
            LayerPath = paths[part.Item1],
            Id = part.Item2 == 0 ? null : part.Item2 == 1 ? int.MinValue : part.Item2,
            State = part.Item3,
            Mark = part.Item4,
            Note = said.Item1,
            Who = said.Item2,
            When = said.Item3 == 0 ? null : LedgerFigure.Monday.AddMinutes(said.Item3),
            Pixels = hashes.Item1,
            Mask = hashes.Item2,
            Look = hashes.Item3,
            Painted = Bounds.FromSize(place.Item1, place.Item2, place.Item3, place.Item4),
        });

    private static Gen<T> AnyOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    /// <summary>A ledger with the text of some parts.</summary>
    public static string Ledger(params string[] parts) => $$"""{ "file": "hero.psd", "fileVersion": "{{new string('0', 64)}}", "parts": [ {{string.Join(", ", parts)}} ] }""";
}
