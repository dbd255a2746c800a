namespace Byrelaw.Reporting.Files;

/// <summary>A file of an older report that a person has filled in or changed.</summary>
/// <param name="Path">Within the report, forward slashes: where the new report has its own.</param>
/// <param name="KeptAs">Within the report: where it lies now.</param>
public sealed record KeptFile(string Path, string KeptAs);

/// <summary>
/// Brings over into a new report what people have put into the older one: files of their own under their names, and pages and lists that they
/// filled in or changed beside the new ones. Nothing that a person wrote is ever lost to a new report.
/// </summary>
internal sealed class KeptInReport
{
    private readonly List<KeptFile> _kept = [];
    private readonly Dictionary<string, string?> _own = new(StringComparer.Ordinal);
    private string _older = "";
    private string _newer = "";

    /// <summary>What was kept beside a file of the new report.</summary>
    public IReadOnlyList<KeptFile> Kept => _kept;

    /// <summary>Brings over what is not there yet: it may be asked again when the older report is about to go.</summary>
    /// <param name="older">Where the older report lies now.</param>
    /// <param name="newer">Where the new one does, with its own files.</param>
    public void Bring(string older, string newer)
    {
        (_older, _newer) = (older, newer);
        if (!File.Exists(Path.Combine(older, ReportFolder.Manifest)))
        {
            return;
        }

        _own.Clear();
        foreach (var (path, digest) in ReportFolder.FilesIn(older))
        {
            _own.TryAdd(path, digest);
        }

        Bring(new DirectoryInfo(older), "");
    }

    private void Bring(DirectoryInfo folder, string above)
    {
        foreach (var entry in folder.EnumerateFileSystemInfos("*", new EnumerationOptions { AttributesToSkip = 0 }))
        {
            var path = above + entry.Name;
            var place = Path.Combine(_newer, path.Replace('/', Path.DirectorySeparatorChar));
            if (entry.LinkTarget is { } leadsTo)
            {
                BringLink(entry, leadsTo, place);
            }
            else if (entry is DirectoryInfo inner)
            {
                if (!inner.EnumerateFileSystemInfos().Any())
                {
                    Directory.CreateDirectory(place);
                }

                Bring(inner, path + "/");
            }
            else if (path != ReportFolder.Manifest)
            {
                BringFile(entry.FullName, path);
            }
        }
    }

    private static void BringLink(FileSystemInfo link, string leadsTo, string place)
    {
        if (Path.Exists(place) || new FileInfo(place).LinkTarget is not null)
        {
            return;
        }

        if (link is DirectoryInfo)
        {
            Directory.CreateSymbolicLink(place, leadsTo);
        }
        else
        {
            File.CreateSymbolicLink(place, leadsTo);
        }
    }

    private void BringFile(string file, string path)
    {
        if (!RegularFile.Exists(file))
        {
            return;
        }

        var isOwn = _own.TryGetValue(path, out var digest);
        var bytes = File.ReadAllBytes(file);
        if (isOwn && IsAsWritten(path, digest, bytes))
        {
            return;
        }

        var place = Path.Combine(_newer, path.Replace('/', Path.DirectorySeparatorChar));
        var keptAs = isOwn || File.Exists(place) ? PlaceBeside(path, bytes) : path;
        if (keptAs is not null)
        {
            WholeFolder.Put(_newer, keptAs, bytes);
            if (keptAs != path)
            {
                _kept.Add(new KeptFile(path, keptAs));
            }
        }
    }

    /// <summary>Whether nobody has changed a file of the report. One of before reports knew that is taken for changed where people fill it in.</summary>
    private static bool IsAsWritten(string path, string? digest, byte[] bytes) =>
        digest is null ? !path.EndsWith(".csv", StringComparison.Ordinal) : ReportFolder.DigestOf(bytes) == digest;

    /// <summary>A name beside the new report's own file: <c>draft.kept.csv</c>, then <c>draft.kept-2.csv</c>; null where just that is there already.</summary>
    private string? PlaceBeside(string path, byte[] bytes)
    {
        var ending = Path.GetExtension(path);
        var stem = path[..^ending.Length];
        for (var number = 1; ; number++)
        {
            // The new report's own file may say just the same as what was filled in.
            var name = number == 1 ? path : string.Create(CultureInfo.InvariantCulture, $"{stem}.kept{(number == 2 ? "" : $"-{number - 1}")}{ending}");
            var place = Path.Combine(_newer, name.Replace('/', Path.DirectorySeparatorChar));
            if (File.Exists(place) && File.ReadAllBytes(place).AsSpan().SequenceEqual(bytes))
            {
                return null;
            }

            if (number > 1 && !File.Exists(place) && !File.Exists(Path.Combine(_older, name.Replace('/', Path.DirectorySeparatorChar))))
            {
                return name;
            }
        }
    }
}
