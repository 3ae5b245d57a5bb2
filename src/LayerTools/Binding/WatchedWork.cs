using System.Management.Automation;

namespace LayerTools.Binding;

/// <summary>Work that goes on apart from the pipeline's thread, which alone may show progress.</summary>
/// <param name="progress">Shows how far it is.</param>
/// <param name="stopping">Stops it.</param>
internal sealed class WatchedWork(ThrottledProgress progress, CancellationTokenSource stopping)
{
    private const int IntervalMilliseconds = 50;
    private (int Done, int Total) state;

    /// <summary>Tells, from any thread, how much of how much is done.</summary>
    public void Report(int done, int total) => state = (done, total);

    /// <summary>Does one item of work.</summary>
    /// <param name="status">What is worked on.</param>
    /// <param name="work">The work.</param>
    /// <exception cref="PipelineStoppedException">It was stopped.</exception>
    public T Wait<T>(string status, Func<T> work)
    {
        state = default;
        var task = Task.Run(work);
        try
        {
            while (!((IAsyncResult)task).AsyncWaitHandle.WaitOne(IntervalMilliseconds))
            {
                var (done, total) = state;
                progress.Report(status, total > 0 ? 100 * done / total : -1);
            }

            return task.GetAwaiter().GetResult();
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
        finally
        {
            // Showing progress ends a stopped command at once; what it works on must not outlive it.
            if (!task.IsCompleted)
            {
                stopping.Cancel();
                ((IAsyncResult)task).AsyncWaitHandle.WaitOne();
            }
        }
    }
}
