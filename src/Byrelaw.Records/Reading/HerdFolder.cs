using Byrelaw.Records.Embryos;
using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Reading;

/// <summary>A folder of records whose sources may hold many herds: opened once, read herd by herd.</summary>
public sealed class HerdFolder
{
    internal const string NoHerds = "nothing says which herd a row is of; say it in a line such as `herd in \"Herd\"` below each `from`";

    private const int MostNamed = 10;

    // What one array of bytes holds.
    private const long MostOnDisk = 2_000_000_000;
    private readonly SourceReader _sources;
    private readonly Vocabulary _vocabulary;
    private readonly RecordKeeping _keeping;

    private HerdFolder(SourceReader sources, Vocabulary vocabulary, RecordKeeping keeping) => (_sources, _vocabulary, _keeping) = (sources, vocabulary, keeping);

    /// <summary>The sheets that were written, for all herds together; null where there is no ledger.</summary>
    private SheetLedger? Ledger { get; init; }

    /// <summary>The embryos that lie beside the records; null for none. What became of one may be told in any herd: of several none has them for itself.</summary>
    private RecordFile? Embryos { get; init; }

    /// <summary>Their ancestors; null for none.</summary>
    private RecordFile? Pedigree { get; init; }

    /// <summary>Files beside those that are read, the farm's own and what <c>record</c> wrote: they may tell of any herd.</summary>
    private ImmutableArray<string> FilesNotRead { get; init; } = [];

    /// <summary>The herds, in order; none where no source says which herd a row is of.</summary>
    public ImmutableArray<string> Herds => _sources.Herds;

    /// <summary>How many animals stand in no herd, though there are herds.</summary>
    public int WithoutHerd => _sources.WithoutHerd;

    /// <summary>Opens the sources that a farm names.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="shownFolder">How the folder is named in messages: relative, forward slashes; empty for the current one.</param>
    /// <param name="vocabulary">The words the rows may use.</param>
    /// <param name="keeping">What the farm says of its records; it names sources.</param>
    /// <param name="recorded">The bytes of <c>events.csv</c> as they would be; null for as they stand there.</param>
    /// <exception cref="RecordsNotFoundException">The folder is missing.</exception>
    public static HerdFolder Open(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping keeping, byte[]? recorded = null)
    {
        if (!Directory.Exists(folder))
        {
            throw new RecordsNotFoundException($"there is no folder {(shownFolder.Length == 0 ? folder : shownFolder)}");
        }

        FilesTogether.FinishAround(Path.Combine(folder, HerdReader.EventsFile));
        var read = RecordedBeside.In(recorded ?? RegularFile.Read(Path.Combine(folder, HerdReader.EventsFile)), keeping, vocabulary);
        return new HerdFolder(
            SourceReader.Open(
                file => recorded is not null && file == HerdReader.EventsFile ? recorded : Bytes(Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar)), file),
                file => shownFolder.Length == 0 ? file : $"{shownFolder.TrimEnd('/')}/{file}", vocabulary, read, file => Messages(folder, file)),
            vocabulary, keeping)
        {
            FilesNotRead = FilesBeside.Of(folder, shownFolder, read.Sources, vocabulary),
            Ledger = SheetLedger.In(folder),
            Embryos = HerdReader.IfThere(folder, shownFolder, EmbryoBook.EmbryosFile),
            Pedigree = HerdReader.IfThere(folder, shownFolder, EmbryoBook.PedigreeFile),
        };
    }

    /// <summary>Reads one herd.</summary>
    /// <param name="herd">Its name.</param>
    /// <param name="knownOn">Rows entered after this day are not seen; null for all rows.</param>
    /// <exception cref="RecordsNotFoundException">There is no such herd.</exception>
    public Herd Read(string herd, LocalDate? knownOn = null) => HerdReading.Read(Input(herd) with { Ledger = Ledger }, _vocabulary, _keeping, knownOn, ReadingOptions.Default).Herd;

    /// <summary>What a herd is read from.</summary>
    internal RecordInput Input(string? herd) => RowsOf(herd) is var rows && Herds.Length > 1 && Embryos is { } embryos
        ? rows with { FilesNotRead = FilesNotRead, Problems = [.. rows.Problems, EmbryoProblems.SeveralHerds(embryos.Shown)] }
        : rows with { FilesNotRead = FilesNotRead, Embryos = Embryos, Pedigree = Pedigree };

    private RecordInput RowsOf(string? herd)
    {
        if (herd is null)
        {
            return Herds.IsEmpty ? _sources.Whole()
                : throw new RecordsNotFoundException($"these records hold {Herds.Length} {(Herds.Length == 1 ? "herd" : "herds")} ({Named()}); say which with `--herd NAME`; `draft` also takes `--each-herd`");
        }

        return Herds.FirstOrDefault(one => AlikeText.OfHerd(one) == AlikeText.OfHerd(herd)) is { } its ? _sources.OfHerd(its)
            : throw new RecordsNotFoundException(Herds.IsEmpty ? NoHerds
                : $"there is no herd `{herd}`{(NearestName.OnlyOne(herd, Herds) is { } near ? $"; perhaps `{near}` is meant" : $"; there are {Named()}")}");
    }

    /// <exception cref="IOException">There are more than fit in memory at once.</exception>
    private static byte[]? Bytes(string path, string file) => RegularFile.Length(path) <= MostOnDisk ? RegularFile.Read(path)
        : throw new IOException($"{file} is larger than 2 GB; part it, by herd or by year, and write a `from` for each part");

    /// <summary>The files of messages in a folder, by names that end in <c>.json</c> or <c>.JSON</c>; null where it is none.</summary>
    private static string[]? Messages(string folder, string file) => Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar)) is var path && Directory.Exists(path)
        ? [.. Directory.EnumerateFiles(path, "*.json", new EnumerationOptions { MatchCasing = MatchCasing.CaseInsensitive }).Select(one => $"{file.TrimEnd('/')}/{Path.GetFileName(one)}").Order(StringComparer.Ordinal)]
        : null;

    private string Named() => string.Join(", ", Herds.Take(MostNamed)) + (Herds.Length > MostNamed ? $" and {Herds.Length - MostNamed} more" : "");
}
