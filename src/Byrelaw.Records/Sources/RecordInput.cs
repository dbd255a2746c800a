using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Sources;

/// <summary>What a herd is read from: the two landed files, or sources put into their form.</summary>
/// <param name="Animals">The animals.</param>
/// <param name="Events">What happened to them.</param>
internal sealed record RecordInput(RecordFile Animals, RecordFile Events)
{
    /// <summary>Where the rows of sources stand; null for the landed files.</summary>
    public SourcePlaces? Places { get; init; }

    /// <summary>What is wrong with sources as a whole.</summary>
    public ImmutableArray<Diagnostic> Problems { get; init; } = [];

    /// <summary>Of whom a sheet says what happened last: from that entry on nothing more did.</summary>
    public ImmutableArray<HerLast> Last { get; init; } = [];

    /// <summary>Whether no source says which animals there are.</summary>
    public bool HasNoAnimals { get; init; }

    /// <summary>Rows that the farm leaves out.</summary>
    public ImmutableArray<RowsLeftOut> LeftOut { get; init; } = [];

    /// <summary>Texts of sources that the farm reads as left out.</summary>
    public ImmutableArray<WordLeftOut> WordsLeftOut { get; init; } = [];

    /// <summary>Headings of columns of sources that no line reads or leaves out.</summary>
    public ImmutableArray<string> HeadingsNotRead { get; init; } = [];

    /// <summary>Headings of columns of sources that no line reads, and whose cells tell of calves.</summary>
    public ImmutableArray<string> HeadingsThatTell { get; init; } = [];

    /// <summary>Files beside those that are read.</summary>
    public ImmutableArray<string> FilesNotRead { get; init; } = [];

    /// <summary>The digest over the sources; null for the landed files, whose digest is taken while they are read.</summary>
    public string? Fingerprint { get; init; }

    /// <summary>The sheets that were written, in the records' folder; null where there is no ledger.</summary>
    public SheetLedger? Ledger { get; init; }

    /// <summary>The farm's embryos; null where there is no such file.</summary>
    public RecordFile? Embryos { get; init; }

    /// <summary>Bulls, bought donors and ancestors; null where there is no such file.</summary>
    public RecordFile? Pedigree { get; init; }

    /// <summary>What lies in a folder, the ledger of its sheets among it.</summary>
    /// <inheritdoc cref="FilesIn"/>
    public static RecordInput In(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping? keeping, string? herd = null, RecordsInstead? instead = null)
    {
        // What a run that was cut off has decided is put into its place before anybody looks.
        FilesTogether.FinishAround(Path.Combine(folder, HerdReader.EventsFile));
        return FilesIn(folder, shownFolder, vocabulary, keeping, herd, instead) with
        {
            Ledger = instead is null ? SheetLedger.In(folder) : instead.Ledger,
        };
    }

    /// <summary>What lies in a folder.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="shownFolder">How the folder is named in messages: relative, forward slashes; empty for the current one.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says; null for nothing.</param>
    /// <param name="herd">Which herd, where there are several; null for the one.</param>
    /// <param name="instead">What would stand there; null for what does.</param>
    /// <exception cref="RecordsNotFoundException">The folder, one of the landed files or the herd is missing, or there are several herds and none is asked for.</exception>
    private static RecordInput FilesIn(string folder, string shownFolder, Vocabulary vocabulary, RecordKeeping? keeping, string? herd, RecordsInstead? instead)
    {
        if (keeping is not null && !keeping.Sources.IsEmpty)
        {
            return HerdFolder.Open(folder, shownFolder, vocabulary, keeping, instead?.Events).Input(herd);
        }

        if (herd is null)
        {
            return new RecordInput(
                HerdReader.FileIn(folder, shownFolder, HerdReader.AnimalsFile),
                HerdReader.FileIn(folder, shownFolder, HerdReader.EventsFile) is var events && instead is null ? events : RecordFile.Of(events.Shown, instead.Events))
            {
                FilesNotRead = FilesBeside.Of(folder, shownFolder, [], vocabulary),
                Embryos = HerdReader.IfThere(folder, shownFolder, EmbryoBook.EmbryosFile),
                Pedigree = HerdReader.IfThere(folder, shownFolder, EmbryoBook.PedigreeFile),
            };
        }

        throw new RecordsNotFoundException(HerdFolder.NoHerds);
    }
}

/// <summary>What is about to be written into a folder of records: it is read as if it stood there.</summary>
/// <param name="Events">The bytes of <c>events.csv</c>.</param>
/// <param name="Ledger">The sheets; null for none.</param>
internal sealed record RecordsInstead(byte[] Events, SheetLedger? Ledger);
