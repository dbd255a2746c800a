using System.Security.Cryptography;

namespace Byrelaw.Reporting.Files;

/// <summary>
/// Puts a report into a folder, whole or not at all: it is written beside the target and moved into
/// place. An older report stays until the new one is whole; files in it that are not the report's
/// own are kept.
/// </summary>
public static class ReportFolder
{
    /// <summary>Names the files that belong to the report, one a line, so that the next one replaces only those; each after its
    /// SHA-256 and two blanks, so that <c>sha256sum -c</c> tells which were edited.</summary>
    public const string Manifest = "report-files.txt";

    private const int HexDigits = 64;
    private const string ManifestHead = "# Files of this report. The next report replaces them and leaves all others alone.";

    /// <summary>Writes a report.</summary>
    /// <param name="target">The folder, or a link to one; made where it is missing.</param>
    /// <param name="files">Made while they are written.</param>
    /// <param name="written">Told after each file how many are written.</param>
    /// <returns>Which files of an older report people had filled in or changed, and under which names they are kept.</returns>
    /// <exception cref="IOException">Something cannot be written, or another run is writing there; the target is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">Something may not be written; the target is as it was.</exception>
    public static IReadOnlyList<KeptFile> Write(string target, IEnumerable<ReportFile> files, Action<int>? written = null)
    {
        Check(target);
        var kept = new KeptInReport();
        WholeFolder.Write(
            target,
            (older, fresh) =>
            {
                // Somebody may have put files there while this run waited for its turn.
                Check(older);
                WriteAll(fresh, files, written);
                kept.Bring(older, fresh);
            },
            late: kept.Bring);
        return kept.Kept;
    }

    private static void WriteAll(string folder, IEnumerable<ReportFile> files, Action<int>? written)
    {
        var manifest = new StringBuilder(ManifestHead).Append('\n');
        var count = 0;
        foreach (var file in files)
        {
            var bytes = Encoding.UTF8.GetBytes(file.Text);
            WholeFolder.Put(folder, file.Path, bytes);
            manifest.Append(DigestOf(bytes)).Append("  ").Append(file.Path).Append('\n');
            written?.Invoke(++count);
        }

        WholeFolder.Put(folder, Manifest, Encoding.UTF8.GetBytes(manifest.ToString()));
    }

    /// <summary>The files of the report in a folder, each with the SHA-256 it was written with; null for one of an older version.</summary>
    public static IEnumerable<(string Path, string? Digest)> FilesIn(string folder) =>
        File.ReadLines(Path.Combine(folder, Manifest)).Where(line => line.Length > 0 && line[0] != '#').Select(line =>
            line.Length > HexDigits + 2 && line[HexDigits] == ' ' && line[HexDigits + 1] == ' ' && line[..HexDigits].All(char.IsAsciiHexDigitLower)
                ? (line[(HexDigits + 2)..], line[..HexDigits]) : (line, (string?)null));

    /// <summary>The SHA-256 of a file, in hexadecimal.</summary>
    internal static string DigestOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Whether a report may go there; a folder that is neither empty nor a report is someone's work.</summary>
    /// <param name="target">The folder.</param>
    /// <exception cref="IOException">It may not; the message says why.</exception>
    public static void Check(string target)
    {
        target = WholeFolder.PlaceOf(target);
        if (File.Exists(target))
        {
            throw new IOException($"{target} is a file; a report needs a folder");
        }

        if (Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any() && !File.Exists(Path.Combine(target, Manifest)))
        {
            throw new IOException($"{target} holds files that are not a report; give an empty or a new folder");
        }

        var here = Path.TrimEndingDirectorySeparator(Directory.GetCurrentDirectory()) + Path.DirectorySeparatorChar;
        if (Directory.Exists(target) && here.StartsWith(Path.TrimEndingDirectorySeparator(target) + Path.DirectorySeparatorChar, StringComparison.Ordinal))
        {
            throw new IOException($"{target} is the folder you work in; give another one");
        }
    }
}
