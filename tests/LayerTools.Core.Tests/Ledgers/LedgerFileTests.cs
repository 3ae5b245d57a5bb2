using System.Globalization;
using System.Text;
using CsCheck;
using Json.Schema;
using LayerTools.Errors;
using LayerTools.Json;
using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Ledgers;

/// <summary>Outside source: JsonSchema.Net, which brings the metaschema of draft-07 (json-schema.org), reads the schema independently of the library the module validates with.</summary>
public sealed class LedgerFileTests : IDisposable
{
    private const string Part = """{ "path": "Arm", "state": "done", "pixels": "" }""";

    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(FormatSchema.ReadText(LedgerSchema.Format)));

    private static readonly Gen<LayerLedger> Ledgers = LedgerTexts.Entries(["Arm", "Arm L", "arm", "Body/a\\/b", "足", "\u001b"], ids: 9, minutes: 5).Array[0, 12]
        .Select(entries => new LayerLedger("hero.psd", new string('1', 64), [.. LedgerMerge.Merge(entries)]));

    private readonly TemporaryFolder folder = new();

    public static TheoryData<string, string, int, int, string> Bad { get; } = new()
    {
        { "", "$", 1, 1, "not JSON" },
        { "[ ]", "$", 1, 1, "The ledger is empty, and has to be an object" },
        { "{ }", "$", 1, 1, "has no 'file'" },
        { new string('[', 100), "$", 1, 1, "not JSON" },
        { LedgerTexts.Ledger("3"), "$.parts[0]", 1, 117, "is 3, and has to be an object" },
        { LedgerTexts.Ledger(Part, """{ "path": 7, "state": "done", "pixels": "" }"""), "$.parts[1].path", 1, 177, "'path' is 7, and has to be a text" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "finished", "pixels": "" }"""), "$.parts[0].state", 1, 143, "one of \"open\", \"done\" and \"recheck\"" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "missing", "pixels": "" }"""), "$.parts[0].state", 1, 143, "one of \"open\", \"done\" and \"recheck\"" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "../../etc" }"""), "$.parts[0].pixels", 1, 161, "a text that matches" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "id": 12345678901 }"""), "$.parts[0].id", 1, 171, "from -2147483648 to 2147483647" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "id": 1e300 }"""), "$.parts[0].id", 1, 171, "larger than any" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "left": 2000000000 }"""), "$.parts[0].left", 1, 173, "to 1000000000" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "width": -1 }"""), "$.parts[0].width", 1, 174, "from 0" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "mark": 70000 }"""), "$.parts[0].mark", 1, 173, "70000" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "when": "2026-02-30T09:30:00Z" }"""), "$.parts[0].when", 1, 173, "no such time" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "when": "yesterday" }"""), "$.parts[0].when", 1, 173, "a text that matches" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "state": "done", "pixels": "", "sate": 1 }"""), "$.parts[0].sate", 1, 165, "no property 'sate'" },
        { LedgerTexts.Ledger(Part, Part), "$.parts[1]", 1, 167, "'Arm' is there twice" },
        { LedgerTexts.Ledger("""{ "path": "Arm", "path": "Leg", "state": "done", "pixels": "" }"""), "$.parts[0].path", 1, 134, "'path' is there twice" },
        { LedgerTexts.Ledger().Replace("{ \"file\"", "{ \"$schema\": \"invented://elsewhere\", \"file\""), "$['$schema']", 1, 14, "never fetched" },
    };

    public void Dispose() => folder.Dispose();

    [Fact]
    public void What_was_written_is_read_back() => Ledgers.Sample(
        ledger =>
        {
            var path = folder["hero.layerledger.json"];
            LedgerFile.Write(ledger, path);
            var read = LedgerFile.Read(path);
            Assert.Equal((ledger.File, ledger.FileVersion), (read.File, read.FileVersion));
            Assert.Equal(ledger.Entries.Count, read.Entries.Count);
            Assert.Superset(new HashSet<LedgerEntry>(ledger.Entries), new HashSet<LedgerEntry>(read.Entries));
            Assert.True(Evaluate(File.ReadAllText(path)));
        },
        iter: 200, threads: 1);

    [Fact]
    public void Equal_ledgers_give_equal_bytes_in_any_order_and_culture() => Gen.Select(Ledgers, Gen.Int).Sample((ledger, seed) =>
    {
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("ar-SA");
            var random = new Random(seed);
            Assert.Equal(LedgerText.Write(ledger), LedgerText.Write(ledger with { Entries = [.. ledger.Entries.OrderBy(_ => random.Next())] }));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    });

    [Fact]
    public void The_text_diffs_well()
    {
        var entry = new LedgerEntry
        {
            LayerPath = "Body/Arm L", Id = 7, Pixels = new string('a', 64), Mask = string.Empty, Look = string.Empty, Painted = new(1, 2, 4, 6), State = PartState.Done, Mark = LayerTools.Model.Mark.Green, Who = "anna", When = LedgerFigure.Monday,
        };
        var path = folder["hero.layerledger.json"];
        Assert.True(LedgerFile.Write(new LayerLedger("hero.psd", new string('0', 64), [entry, entry with { LayerPath = "Body/Arm", Note = "線" }]), path));
        Assert.False(LedgerFile.Write(LedgerFile.Read(path), path));
        var text = File.ReadAllText(path);
        Assert.DoesNotContain("\r", text, StringComparison.Ordinal);
        Assert.Equal((byte)'{', File.ReadAllBytes(path)[0]);
        Assert.StartsWith("{\n  \"$schema\": \"urn:layertools:layerledger:1\",\n  \"file\": \"hero.psd\",\n", text, StringComparison.Ordinal);
        Assert.EndsWith(
            """
                {
                  "path": "Body/Arm L",
                  "id": 7,
                  "state": "done",
                  "mark": "green",
                  "note": "",
                  "who": "anna",
                  "when": "2026-03-02T09:30:00Z",
                  "pixels": "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa",
                  "mask": "",
                  "look": "",
                  "left": 1,
                  "top": 2,
                  "width": 3,
                  "height": 4
                }
              ]
            }

            """.Replace("\r", string.Empty), text, StringComparison.Ordinal);
        Assert.Equal([folder["hero.layerledger.json"]], Directory.GetFiles(folder.Root));
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void Bad_ledgers_are_refused_with_their_place(string text, string jsonPath, int line, int column, string problem)
    {
        var error = Assert.Throws<LayeredFileException>(() => LedgerFile.Read(Write(text)));
        Assert.Equal(LayeredFileErrorKind.BadLedger, error.Kind);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.NotEmpty(error.Remedy);
        if (!text.StartsWith("[[", StringComparison.Ordinal)) Assert.Equal(FormattableString.Invariant($"{jsonPath}, line {line}, column {column}"), error.Section);
    }

    [Fact]
    public void Huge_ledgers_are_refused()
    {
        var path = folder["huge.layerledger.json"];
        using (var stream = File.Create(path)) stream.SetLength((16 << 20) + 1);
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, Assert.Throws<LayeredFileException>(() => LedgerFile.Read(path)).Kind);
        var many = LedgerTexts.Ledger([.. Enumerable.Range(0, 10_001).Select(i => Part.Replace("Arm", FormattableString.Invariant($"{i}")))]);
        Assert.Contains("10000 items", Assert.Throws<LayeredFileException>(() => LedgerFile.Read(Write(many))).Problem, StringComparison.Ordinal);
        var values = LedgerTexts.Ledger(string.Join(",", Enumerable.Repeat("0", 400_000)));
        Assert.Contains("more than 310000 values", Assert.Throws<LayeredFileException>(() => LedgerFile.Read(Write(values))).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void What_could_not_be_read_again_is_not_written()
    {
        var entry = LedgerFile.Read(Write(LedgerTexts.Ledger(Part))).Entries[0];
        var error = Assert.Throws<LayeredFileException>(() => LedgerFile.Write(new LayerLedger("hero.psd", new string('0', 64), [.. Enumerable.Range(0, 10_001).Select(i => entry with { Id = i })]), folder["many.layerledger.json"]));
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        Assert.False(File.Exists(folder["many.layerledger.json"]));
    }

    [Fact]
    public void The_file_that_a_ledger_names_is_never_looked_for()
    {
        var ledger = LedgerFile.Read(Write(LedgerTexts.Ledger(Part).Replace("hero.psd", "../../../etc/passwd")));
        Assert.Equal("../../../etc/passwd", ledger.File);
        Assert.Equal(Path.Combine("figures", "hero.layerledger.json"), LayerLedger.FindPath(Path.Combine("figures", "hero.psd")));
    }

    [Fact]
    public void Another_library_agrees_with_the_schema()
    {
        Assert.True(MetaSchemas.Draft7.Evaluate(System.Text.Json.JsonDocument.Parse(FormatSchema.ReadText(LedgerSchema.Format)).RootElement).IsValid);
        Assert.True(Evaluate(LedgerTexts.Ledger(Part)));
        Assert.False(Evaluate(LedgerTexts.Ledger("""{ "path": "Arm", "state": "missing", "pixels": "" }""")));
    }

    private static bool Evaluate(string text) => Schema.Value.Evaluate(System.Text.Json.JsonDocument.Parse(text).RootElement).IsValid;

    private string Write(string text)
    {
        var path = folder["any.layerledger.json"];
        File.WriteAllText(path, text, new UTF8Encoding(false));
        return path;
    }
}
