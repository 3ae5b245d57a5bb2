using System.Diagnostics;
using System.Management.Automation;

namespace LayerTools.Binding;

/// <summary>Progress that is shown at most every 200 ms, since drawing it can cost more than the work.</summary>
internal sealed class ThrottledProgress(Cmdlet cmdlet, string activity)
{
    private const int IntervalMilliseconds = 200;
    private readonly Stopwatch sinceShown = Stopwatch.StartNew();
    private bool isShown;

    /// <param name="status">What is being worked on.</param>
    /// <param name="percent">0 to 100, or -1 where the end is not known.</param>
    public void Report(string status, int percent = -1)
    {
        if (sinceShown.ElapsedMilliseconds < IntervalMilliseconds) return;
        cmdlet.WriteProgress(new ProgressRecord(0, activity, status) { PercentComplete = percent });
        isShown = true;
        sinceShown.Restart();
    }

    public void Complete()
    {
        if (!isShown) return;
        cmdlet.WriteProgress(new ProgressRecord(0, activity, "Done") { RecordType = ProgressRecordType.Completed });
        isShown = false;
    }
}
