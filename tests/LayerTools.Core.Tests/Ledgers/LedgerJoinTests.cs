using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Ledgers.LedgerFigure;

namespace LayerTools.Tests.Ledgers;

public class LedgerJoinTests
{
    [Theory]
    [InlineData("Raw")]
    [InlineData("PackBits")]
    [InlineData("Zip")]
    [InlineData("ZipPrediction")]
    public void Marks_come_back_after_an_export_without_colours(string compression)
    {
        var (file, ledger) = CreateMarked();
        LoseMarks(file, Enum.Parse<Compression>(compression));
        file.Part("Arm L").Name = "arm_left";
        file.Part("Face").Bounds = file.Part("Face").Bounds.Shift(7, -3);
        var coat = file.Part("Coat");
        coat.Detach();
        file.Root.Insert(0, coat);
        file.Renumber();

        var marks = FindMarks(file, ledger);

        Assert.Equal(["Coat Red", "Face Yellow", "arm_left Green"], marks.Select(item => $"{item.Key.Name} {item.Value}").OrderBy(text => text, StringComparer.Ordinal));
        var join = Join(file, ledger);
        Assert.Equal((LedgerEvidence.Fingerprint, PartState.Done), (join.Row("arm_left").Evidence, join.Row("arm_left").State));
        Assert.Equal((LedgerEvidence.Path, PartState.Recheck), (join.Row("Face").Evidence, join.Row("Face").State));
        Assert.Equal((LedgerEvidence.Fingerprint, PartState.Open), (join.Row("Coat").Evidence, join.Row("Coat").State));
        Assert.Empty(join.Vanished);
    }

    [Fact]
    public void A_part_done_and_repainted_since_is_to_be_rechecked_and_gets_no_mark()
    {
        var (file, ledger) = CreateMarked();
        LoseMarks(file);
        Repaint(file.Part("Arm L"));

        Assert.Equal(PartState.Recheck, Join(file, ledger).Row("Arm L").State);
        Assert.DoesNotContain(file.Part("Arm L"), FindMarks(file, ledger).Keys);

        // Brought up to date it stays so, and is not taken for done because it now holds what the ledger says.
        var later = Export(file, ledger);
        Assert.Equal(PartState.Recheck, Join(file, later).Row("Arm L").State);

        // A green mark from now on is a new one.
        file.Part("Arm L").Mark = Mark.Green;
        Assert.Equal(PartState.Done, Join(file, later).Row("Arm L").State);
    }

    [Fact]
    public void A_new_mask_is_a_change_and_a_place_is_none()
    {
        var (file, ledger) = CreateMarked();
        var arm = file.Part("Arm L");
        arm.Bounds = arm.Bounds.Shift(11, 4);
        Assert.Equal(PartState.Done, Join(file, ledger).Row("Arm L").State);
        arm.Mask = new LayerMask { Bounds = arm.Bounds };
        arm.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, new byte[arm.Bounds.Width * arm.Bounds.Height].Select((_, i) => (byte)(i % 251)).ToArray()));
        Assert.Equal(PartState.Recheck, Join(file, ledger).Row("Arm L").State);
    }

    [Fact]
    public void Open_and_rechecked_parts_stay_so_whatever_is_painted()
    {
        var (file, ledger) = CreateMarked();
        LoseMarks(file);
        Repaint(file.Part("Coat"));
        Repaint(file.Part("Face"));
        var join = Join(file, ledger);
        Assert.Equal((PartState.Open, PartState.Recheck), (join.Row("Coat").State, join.Row("Face").State));
    }

    [Fact]
    public void A_part_that_vanished_is_listed_and_kept_until_it_is_removed()
    {
        var (file, ledger) = CreateMarked();
        file.Part("Arm L").Detach();
        file.Renumber();

        var gone = Assert.Single(Read(file, ledger), status => status.State == PartState.Missing);
        Assert.Equal(("Body/Arm L", "Arm L", "Body", 0, false), (gone.LayerPath, gone.Name, gone.Group, gone.LayerNumber, gone.IsPart));
        var kept = Export(file, ledger);
        Assert.Contains(kept.Entries, entry => entry is { LayerPath: "Body/Arm L", State: PartState.Done });
        Assert.DoesNotContain(Update(file, new LedgerUpdate { Now = Monday, RemoveMissing = true }, kept).Entries, entry => entry.LayerPath == "Body/Arm L");
    }

    [Fact]
    public void Twins_are_reported_and_never_guessed()
    {
        var (file, ledger) = CreateMarked();
        LoseMarks(file);
        var group = file.Part("Head");
        file.Part("Eye L").Detach();
        group.Insert(0, Eye("Left eye", 80));
        group.Insert(0, Eye("Right eye", 100));
        file.Renumber();

        var join = Join(file, ledger);
        Assert.All(new[] { "Left eye", "Right eye" }, name =>
        {
            var row = join.Row(name);
            Assert.Equal((LedgerEvidence.Ambiguous, (PartState?)null), (row.Evidence, row.State));
            Assert.Equal(["Head/Eye L"], row.Candidates);
        });
        Assert.Empty(join.Vanished);
        Assert.Equal("Head/Eye L", Assert.Single(join.Undecided).LayerPath);
        Assert.DoesNotContain(FindMarks(file, ledger).Keys, layer => layer.Name.EndsWith("eye", StringComparison.Ordinal));

        // The entry waits for somebody to say which it is.
        Assert.Contains(Export(file, ledger).Entries, entry => entry.LayerPath == "Head/Eye L");
        var told = Update(file, new LedgerUpdate { Now = Monday, Chosen = new HashSet<Layer> { file.Part("Left eye") }, State = PartState.Done }, ledger);
        Assert.Equal(PartState.Done, Join(file, told).Row("Left eye").State);
    }

    [Fact]
    public void Twins_of_one_path_are_told_apart_by_id_or_by_where_they_lie()
    {
        var file = ModelBuilder.File("/figures/twins.psd", 200, 100, Eye("Eye", 10), Eye("Eye", 120));
        var (one, other) = (file.GetChildren()[0], file.GetChildren()[1]);
        one.Mark = Mark.Green;
        other.Mark = Mark.Red;
        var ledger = Export(file);
        Assert.Equal(2, ledger.Entries.Count);
        Assert.All(Join(file, ledger).Rows, row => Assert.Equal(LedgerEvidence.Id, row.Evidence));
        Assert.Equal([PartState.Done, PartState.Open], Join(file, ledger).Rows.Select(row => row.State!.Value));
        (one.Id, other.Id, one.Mark, other.Mark) = (null, null, Mark.None, Mark.None);
        Assert.Equal([PartState.Done, PartState.Open], Join(file, ledger).Rows.Select(row => row.State!.Value));
    }

    [Fact]
    public void A_renamed_and_retouched_part_is_known_by_its_looks()
    {
        var (file, ledger) = CreateMarked();
        LoseMarks(file);
        var face = file.Part("Face");
        face.Name = "visage";
        using (var reader = new PixelReader(file)) face.Planes[^1] = ModelBuilder.Raw(face.Planes[^1].Role, [.. reader.ReadPlane(face, face.Planes[^1].Role)!.Select(value => (byte)(value ^ 3))]);
        var row = Join(file, ledger).Row("visage");
        Assert.Equal((LedgerEvidence.Likeness, PartState.Recheck), (row.Evidence, row.State));
        Assert.DoesNotContain(face, FindMarks(file, ledger).Keys);
    }

    [Fact]
    public void A_mark_that_differs_from_the_ledgers_is_newer()
    {
        var (file, ledger) = CreateMarked();
        file.Part("Coat").Mark = Mark.Green;
        file.Part("Arm L").Mark = Mark.Yellow;
        file.Part("Face").Mark = Mark.Violet;
        var join = Join(file, ledger);
        Assert.Equal((PartState.Done, PartState.Recheck, PartState.Recheck), (join.Row("Coat").State, join.Row("Arm L").State, join.Row("Face").State));
        Assert.Empty(FindMarks(file, ledger));
        var written = Update(file, new LedgerUpdate { Now = Monday.AddDays(1), Who = "ben" }, ledger).Entries.Single(entry => entry.LayerPath == "Body/Coat");
        Assert.Equal((PartState.Done, Mark.Green, "ben", Monday.AddDays(1)), (written.State, written.Mark, written.Who, written.When));
    }

    [Fact]
    public void A_mark_that_was_taken_away_alone_is_no_longer_done()
    {
        var (file, ledger) = CreateMarked();
        file.Part("Arm L").Mark = Mark.None;
        Assert.Equal(PartState.Recheck, Join(file, ledger).Row("Arm L").State);
    }

    [Fact]
    public void A_mark_on_a_group_counts_for_what_is_in_it()
    {
        var file = Create();
        file.Part("Head").Mark = Mark.Green;
        var ledger = Export(file);
        LoseMarks(file);
        Assert.Equal(["Eye L", "Face"], Join(file, ledger).Rows.Where(row => row.State == PartState.Done).Select(row => row.Layer!.Name));
    }

    [Fact]
    public void Names_that_are_no_text_go_there_and_back()
    {
        var file = ModelBuilder.File("/figures/odd.psd", 200, 100, Eye("eye \ud83d", 10), Eye("eye \ud83e", 120));
        var ledger = Update(file, new LedgerUpdate { Now = Monday, Chosen = new HashSet<Layer>(file.GetChildren()), State = PartState.Done });
        using var folder = new TemporaryFolder();
        LedgerFile.Write(ledger, folder["odd.layerledger.json"]);
        Assert.All(Join(file, LedgerFile.Read(folder["odd.layerledger.json"])).Rows, row => Assert.Equal(PartState.Done, row.State));
    }

    [Fact]
    public void The_same_state_gives_the_same_ledger()
    {
        var (file, ledger) = CreateMarked();
        var again = Update(file, new LedgerUpdate { Now = Monday.AddDays(3), Who = "ben" }, ledger);
        Assert.Equal(LedgerText.Write(ledger), LedgerText.Write(again));
    }

    [Fact]
    public void A_state_that_was_set_holds_against_the_mark_of_then()
    {
        var (file, ledger) = CreateMarked();
        var set = Update(file, new LedgerUpdate { Now = Monday.AddHours(1), Who = "ben", Chosen = new HashSet<Layer> { file.Part("Coat") }, State = PartState.Done, Note = "buttons are right now" }, ledger);
        var coat = Join(file, set).Row("Coat");
        Assert.Equal((PartState.Done, "buttons are right now", "ben"), (coat.State, coat.Entry!.Note, coat.Entry.Who));
        Assert.Equal(Mark.Green, FindMarks(file, set)[file.Part("Coat")]);
        Assert.Equal("anna", Join(file, set).Row("Face").Entry!.Who);
    }

    [Fact]
    public void Several_peoples_ledgers_of_different_versions_are_joined_by_part()
    {
        var (file, ledger) = CreateMarked();
        var arm = file.Part("Arm L");
        var anna = Update(file, new LedgerUpdate { Now = Monday.AddHours(2), Who = "anna", Chosen = new HashSet<Layer> { arm }, State = PartState.Open, Note = "elbow" }, ledger);
        arm.Name = "arm_left";
        var ben = Update(file, new LedgerUpdate { Now = Monday.AddHours(5), Who = "ben", Chosen = new HashSet<Layer> { arm }, State = PartState.Done }, ledger);
        LoseMarks(file);

        foreach (var ledgers in new[] { new[] { anna, ben }, [ben, anna], [ben, anna, ledger, ben] })
        {
            var join = Join(file, ledgers);
            Assert.Equal((PartState.Done, "ben"), (join.Row("arm_left").State, join.Row("arm_left").Entry!.Who));
            Assert.Empty(join.Vanished);
            var clash = Assert.Single(join.Clashes, clash => clash.OtherWho == "anna" && clash.OtherNote == "elbow");
            Assert.Equal(("Body/arm_left", PartState.Open, Monday.AddHours(2)), (clash.LayerPath, clash.OtherState, clash.OtherWhen));
        }
    }

    [Fact]
    public void Without_a_ledger_states_follow_from_marks_and_without_marks_from_nothing()
    {
        var file = Create();
        Assert.All(Read(file), status => Assert.Equal(((PartState?)null, (bool?)null), (status.State, status.Done)));
        file.Part("Face").Mark = Mark.Green;
        file.Part("Coat").Mark = Mark.Yellow;
        Assert.Equal(["Eye L Open False", "Face Done True", "Arm L Open False", "Coat Recheck False", "Backdrop  "], Read(file).Select(status => $"{status.Name} {status.State} {status.Done}"));
    }

    [Fact]
    public void Sums_tell_what_is_to_recheck_and_what_is_missing()
    {
        var (file, ledger) = CreateMarked();
        LoseMarks(file);
        Repaint(file.Part("Arm L"));
        file.Part("Eye L").Detach();
        file.Renumber();
        var sums = new StatusSums(StatusGrouping.File);
        foreach (var status in Read(file, ledger)) sums.Add(status);
        var sum = Assert.Single(sums.Summarize());
        Assert.Equal((3, 0, 2, 1, 1, 0), (sum.Parts, sum.Done, sum.Recheck, sum.Open, sum.Missing, sum.Unknown));
        Assert.Equal((0.0, 1), (sum.PercentByCount, sums.FileCount));
        Assert.Contains("To be rechecked: 2.", sum.Note, StringComparison.Ordinal);
    }

    private static (LayerFile File, LayerLedger Ledger) CreateMarked()
    {
        var file = Create();
        file.Part("Arm L").Mark = Mark.Green;
        file.Part("Face").Mark = Mark.Yellow;
        file.Part("Coat").Mark = Mark.Red;
        return (file, Export(file));
    }
}
