namespace LayerTools.Model;

/// <summary>Reading streams into spans, also where the framework lacks it.</summary>
internal static class StreamReading
{
    /// <summary>Fills the buffer; false if the stream ends before.</summary>
    public static bool TryFill(Stream stream, Span<byte> buffer)
    {
#if NET8_0_OR_GREATER
        return stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false) == buffer.Length;
#else
        var rented = System.Buffers.ArrayPool<byte>.Shared.Rent(Math.Min(Math.Max(buffer.Length, 1), 1 << 20));
        try
        {
            for (var filled = 0; filled < buffer.Length;)
            {
                var count = stream.Read(rented, 0, Math.Min(rented.Length, buffer.Length - filled));
                if (count == 0) return false;
                rented.AsSpan(0, count).CopyTo(buffer.Slice(filled));
                filled += count;
            }

            return true;
        }
        finally
        {
            System.Buffers.ArrayPool<byte>.Shared.Return(rented);
        }
#endif
    }
}
