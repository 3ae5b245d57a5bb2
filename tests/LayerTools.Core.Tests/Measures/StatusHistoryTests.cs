using System.Globalization;
using LayerTools.Errors;
using LayerTools.Measures;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Measures;

public sealed class StatusHistoryTests : IDisposable
{
    private static readonly DateTime Time = new(2026, 3, 2, 9, 30, 0, DateTimeKind.Utc);

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Each_run_is_a_line_under_one_header_in_any_culture()
    {
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("fa-IR");
            Append(Sum(8, 3), files: 2);
            Append(Sum(9, 9) with { Recheck = null, Missing = null }, files: 3);
            Append(Sum(4, 0) with { Unknown = 4, Done = null, Open = null }, files: 1);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }

        Assert.Equal(
            "Time,Files,Parts,Done,Recheck,Open,Unknown,Missing,SharePercent\r\n2026-03-02T09:30:00Z,2,8,3,1,2,0,1,37.5\r\n2026-03-02T09:30:00Z,3,9,9,,2,0,,100\r\n2026-03-02T09:30:00Z,1,4,,1,,4,1,\r\n",
            File.ReadAllText(folder["progress.csv"]));
    }

    [Theory]
    [InlineData("When,Files\r\n1,2\r\n")]
    [InlineData("Time;Files;Parts;Done;Recheck;Open;Unknown;Missing;SharePercent\r\n")]
    [InlineData("\0\0\0\0")]
    public void A_file_with_other_columns_is_left_alone(string text)
    {
        File.WriteAllText(folder["progress.csv"], text);
        var error = Assert.Throws<LayeredFileException>(() => Append(Sum(8, 3), files: 2));
        Assert.Equal(LayeredFileErrorKind.BadLedger, error.Kind);
        Assert.Equal(text, File.ReadAllText(folder["progress.csv"]));
    }

    [Theory]
    [InlineData("\uFEFF\"Time\",\"Files\",\"Parts\",\"Done\",\"Recheck\",\"Open\",\"Unknown\",\"Missing\",\"SharePercent\"\r\n\"2026-03-01T09:30:00Z\",\"2\",\"8\",\"3\",\"1\",\"2\",\"0\",\"1\",\"37.5\"\r\n")]
    [InlineData("Time,Files,Parts,Done,Recheck,Open,Unknown,Missing,SharePercent\n2026-03-01T09:30:00Z,2,8,3,1,2,0,1,37.5")]
    public void What_another_program_saved_goes_on(string text)
    {
        File.WriteAllText(folder["progress.csv"], text);
        Append(Sum(8, 3), files: 2);
        var lines = File.ReadAllLines(folder["progress.csv"]);
        Assert.Equal((3, "2026-03-02T09:30:00Z,2,8,3,1,2,0,1,37.5"), (lines.Length, lines[2]));
    }

    [Fact]
    public void Runs_at_one_time_wait_for_each_other()
    {
        Parallel.For(0, 40, new ParallelOptions { MaxDegreeOfParallelism = 8 }, i => Append(Sum(8, 3), files: i));
        var lines = File.ReadAllLines(folder["progress.csv"]);
        Assert.Equal(41, lines.Length);
        Assert.Equal(StatusHistory.Header, lines[0]);
        Assert.Equal(Enumerable.Range(0, 40), lines.Skip(1).Select(line => int.Parse(line.Split(',')[1], CultureInfo.InvariantCulture)).Order());
    }

    private void Append(StatusSummary sum, int files) => StatusHistory.Append(folder["progress.csv"], sum, files, Time, TestContext.Current.CancellationToken);

    private static StatusSummary Sum(int parts, int done) => new()
    {
        Key = "(all)", Parts = parts, Done = done, Recheck = 1, Open = 2, Missing = 1, Unknown = 0, PercentByCount = 0, PercentByArea = 0, MissingOpposites = 0, SetApart = 0, PaintedArea = 0, HasMarks = true, Note = string.Empty,
    };
}
