namespace Byrelaw.Cli.Files;

/// <summary>Puts the files of sheets into a folder. Rows that somebody has filled in are never written over.</summary>
internal static class SheetFiles
{
    /// <summary>Writes them, all or none.</summary>
    /// <param name="folder">Full; made where it is missing.</param>
    /// <param name="files">Pages, and rows to fill in.</param>
    /// <returns>Files that were filled in, and are as they were.</returns>
    public static IReadOnlyList<string> Write(string folder, IEnumerable<FileToWrite> files)
    {
        var kept = new List<string>();
        FilesTogether.Change(folder, () =>
        {
            kept.Clear();
            var written = new List<FileToWrite>();
            foreach (var file in files)
            {
                var there = RegularFile.Read(Path.Combine(folder, file.Path));
                if (there is not null && file.Path.EndsWith(".csv", StringComparison.Ordinal) && !there.AsSpan().SequenceEqual(file.Bytes.Span))
                {
                    kept.Add(file.Path);
                }
                else if (there is null || !file.Path.EndsWith(".xlsx", StringComparison.Ordinal))
                {
                    written.Add(file);
                }
            }

            return written;
        });
        return kept;
    }
}
