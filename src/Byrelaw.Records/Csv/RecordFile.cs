namespace Byrelaw.Records.Csv;

/// <summary>A file of records that can be opened more than once.</summary>
/// <param name="Shown">Its name in messages.</param>
/// <param name="Length">In bytes.</param>
/// <param name="Open">Opens it at its start.</param>
internal sealed record RecordFile(string Shown, long Length, Func<Stream> Open)
{
    /// <summary>A file in memory.</summary>
    public static RecordFile Of(string shown, byte[] bytes) => new(shown, bytes.Length, () => new MemoryStream(bytes, writable: false));

    /// <summary>A file on disk.</summary>
    public static RecordFile At(string shown, string path) => new(
        shown, new FileInfo(path).Length,
        () => new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0, FileOptions.SequentialScan));

    /// <summary>Whether it starts as files in UTF-16 do.</summary>
    public bool IsUtf16()
    {
        using var stream = Open();
        Span<byte> start = stackalloc byte[2];
        var read = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        return read == 2 && (start.SequenceEqual((ReadOnlySpan<byte>)[0xFF, 0xFE]) || start.SequenceEqual((ReadOnlySpan<byte>)[0xFE, 0xFF]));
    }
}
