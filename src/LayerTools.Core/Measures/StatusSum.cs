namespace LayerTools.Measures;

/// <summary>The running sum of one key.</summary>
internal sealed class StatusSum
{
    private int done;
    private int open;
    private int recheck;
    private int missing;
    private int unknown;
    private int missingOpposites;
    private int setApart;
    private long doneArea;
    private long openArea;
    private long unknownArea;
    private bool hasMarks;
    private bool hasStates;

    public void Add(LayerStatus status)
    {
        hasMarks |= status.FileHasMarks;
        hasStates |= status.State is not null;
        if (status.State == PartState.Missing)
        {
            missing++;
            return;
        }

        if (!status.IsPart)
        {
            if (status.PaintedArea > 0) setApart++;
            return;
        }

        if (status.MissingOpposite) missingOpposites++;
        switch (status.Done)
        {
            case false when status.State == PartState.Recheck:
                recheck++;
                openArea += status.PaintedArea;
                break;
            case true:
                done++;
                doneArea += status.PaintedArea;
                break;
            case false:
                open++;
                openArea += status.PaintedArea;
                break;
            default:
                unknown++;
                unknownArea += status.PaintedArea;
                break;
        }
    }

    public StatusSummary Summarize(string key)
    {
        var known = done + open + recheck;
        return new StatusSummary
        {
            Key = key,
            Parts = known + unknown,
            Done = known > 0 || unknown == 0 ? done : null,
            Open = known > 0 || unknown == 0 ? open : null,
            Recheck = hasStates ? recheck : null,
            Missing = hasStates ? missing : null,
            Unknown = unknown,
            PercentByCount = Percent(done, known),
            PercentByArea = Percent(doneArea, doneArea + openArea),
            MissingOpposites = missingOpposites,
            SetApart = setApart,
            PaintedArea = doneArea + openArea + unknownArea,
            HasMarks = hasMarks,
            Note = Note(known),
        };
    }

    /// <summary>To a tenth; but 0 and 100 are said only where nothing and everything is done.</summary>
    private static double? Percent(long part, long whole)
    {
        if (whole == 0) return null;
        if (part == 0 || part == whole) return part == 0 ? 0 : 100;
        return Math.Min(Math.Max(Math.Round(100.0 * part / whole, 1), 0.1), 99.9);
    }

    private string Note(int known)
    {
        if (known + unknown + missing == 0) return "No layer here is a part that carries pixels.";
        return string.Join(" ", new[] { NoteUnknown(known), NoteLedger() }.Where(note => note.Length > 0));
    }

    private string NoteUnknown(int known)
    {
        if (unknown == 0) return string.Empty;
        if (hasStates) return FormattableString.Invariant($"{unknown} of {known + unknown} parts could be several of the ledger's, or lie in files without marks and ledger; the percentages leave them out.");
        return known == 0
            ? "No layer carries a mark, so nothing says what is finished; where marks were lost, say with -DoneName what finished layers are called."
            : FormattableString.Invariant($"{unknown} of {known + unknown} parts lie in files where no layer carries a mark; the percentages leave them out.");
    }

    private string NoteLedger()
    {
        var notes = new List<string>();
        if (recheck > 0) notes.Add(FormattableString.Invariant($"To be rechecked: {recheck}."));
        if (missing > 0) notes.Add(FormattableString.Invariant($"In the ledger and no longer in the file: {missing}."));
        return string.Join(" ", notes);
    }
}
