using System.Runtime.ExceptionServices;

namespace LayerTools.Deliveries;

/// <summary>Does one thing for each of many items, on all processors.</summary>
internal static class ParallelWork
{
    /// <summary>The results in the order of the items. The error of the first item that fails is thrown as it is.</summary>
    public static TResult[] Select<TItem, TResult>(IReadOnlyList<TItem> items, Func<TItem, TResult> work, CancellationToken cancellation)
    {
        var results = new TResult[items.Count];
        var errors = new ExceptionDispatchInfo?[items.Count];
        Parallel.For(0, items.Count, new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount }, (i, state) =>
        {
            try
            {
                results[i] = work(items[i]);
            }
            catch (Exception error)
            {
                errors[i] = ExceptionDispatchInfo.Capture(error);
                state.Break();
            }
        });
        Array.Find(errors, error => error is not null)?.Throw();
        return results;
    }
}
