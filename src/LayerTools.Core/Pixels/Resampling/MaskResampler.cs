using LayerTools.Pixels.Compositing;

namespace LayerTools.Pixels.Resampling;

/// <summary>Resamples a mask row by row; around its rectangle it goes on with one value.</summary>
internal static class MaskResampler
{
    /// <param name="area">From where to where.</param>
    /// <param name="bitDepth">8, 16 or 32.</param>
    /// <param name="around">The mask's value outside its rectangle, 0 to 1.</param>
    /// <param name="input">The mask's rows.</param>
    /// <param name="output">Where the new rows go.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static void Run(ScaledArea area, int bitDepth, float around, RowInput input, RowOutput output, CancellationToken cancellation)
    {
        var stored = new byte[PlaneRows.GetRowBytes(area.Old.Width, bitDepth)];
        var encoded = new byte[PlaneRows.GetRowBytes(area.New.Width, bitDepth)];
        float[][] samples = [new float[area.Old.Width]];
        var rows = new RowResampler(area, 1, Take);
        for (var y = 0; y < area.Old.Height; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            input(stored);
            Samples.Decode(stored, bitDepth, samples[0]);
            for (var x = 0; x < samples[0].Length; x++) samples[0][x] -= around;
            rows.Add(samples, 0, area.Old.Width);
        }

        void Take(int row, float[][] result)
        {
            var mask = result[0];
            for (var x = 0; x < mask.Length; x++) mask[x] = Math.Max(0, Math.Min(1, mask[x] + around));
            Samples.Encode(mask, bitDepth, encoded);
            output(encoded);
        }
    }
}
