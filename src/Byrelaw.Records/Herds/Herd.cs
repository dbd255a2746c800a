using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Herds;

/// <summary>
/// A farm's animals and what is on record of them, in columns: an animal is a place in every
/// array, in the order of <see cref="AnimalNumberOrder"/>.
/// </summary>
public sealed class Herd
{
    private Dictionary<string, int>? _places;

    /// <summary>The words the records are read with; kind and fact ids are its.</summary>
    public required Vocabulary Vocabulary { get; init; }

    /// <summary>The farm's own numbers, sorted.</summary>
    public required string[] Numbers { get; init; }

    /// <summary>Further numbers of animals, with their places: where a person says that two numbers are one animal's.</summary>
    public IReadOnlyList<(string Number, int Place)> AlsoNumbers { get; init; } = [];

    /// <summary>How many animals there are.</summary>
    public int Count => Numbers.Length;

    /// <summary>Sex on record.</summary>
    public required Sex[] Sexes { get; init; }

    /// <summary>First possible day of birth; <see cref="Day.Start"/> where not known.</summary>
    public required int[] BornEarliest { get; init; }

    /// <summary>Last possible day of birth; <see cref="Day.End"/> where not known.</summary>
    public required int[] BornLatest { get; init; }

    /// <summary>By animal: whether something stands there as her birth that cannot be read, or cannot be. Empty: of none.</summary>
    public bool[] BirthIsUnreadable { get; init; } = [];

    /// <summary>The parity in <c>animals.csv</c>; -1 where blank, -2 where it could not be read.</summary>
    public required int[] RecordedParity { get; init; }

    /// <summary>The day that each parity is of; <see cref="Day.End"/> for <see cref="Today"/>, <see cref="Day.Start"/> where it could not be
    /// read. Empty: today for all.</summary>
    public int[] ParityOn { get; init; } = [];

    /// <summary>The day the records reach today, whatever day they are read as known on: facts without a date are of that day.</summary>
    public LocalDate? Today { get; init; }

    /// <summary>By animal: whether her parity speaks against her calvings, so that neither is believed. Empty: of none.</summary>
    public bool[] ParityIsDoubted { get; init; } = [];

    /// <summary>Lines of <c>animals.csv</c>, from 1.</summary>
    public required int[] AnimalLines { get; init; }

    /// <summary>How many more animals there may be: rows of <c>animals.csv</c> whose number cannot be read, or is
    /// another animal's. Each may or may not be a member of the herd, with any fact whatever.</summary>
    public int AnimalsWithoutNumber { get; init; }

    /// <summary>By fact id.</summary>
    public required FactColumn[] Facts { get; init; }

    /// <summary>By kind id.</summary>
    public required KindRun[] Runs { get; init; }

    /// <summary>By kind id: mob rows of a measure; null for every other kind.</summary>
    public required MobRun?[] MobRuns { get; init; }

    /// <summary>By kind id: results of a mob or the herd that may or may not be each member's; null where there are none. Empty: none at all.</summary>
    public GroupRun?[] GroupRuns { get; init; } = [];

    /// <summary>By kind id: <see cref="Runs"/> without what rows of a mob or the herd say, of kinds that begin or end a spell; null
    /// where that is the same. Empty: always.</summary>
    public KindRun?[] OwnRuns { get; init; } = [];

    /// <summary>Rows of mobs and of the herd that begin and end spells, and moves of whole mobs.</summary>
    public MobRows MobRows { get; init; } = MobRows.None;
    /// <summary>What more is on record of entries.</summary>
    public EntryDetails Details { get; init; } = EntryDetails.None;

    /// <summary>Who is in which mob.</summary>
    public required MobStays Mobs { get; init; }

    /// <summary>Who is in the herd.</summary>
    public required Membership Membership { get; init; }

    /// <summary>What may be taken as complete.</summary>
    public required Coverage Coverage { get; init; }

    /// <summary>The day the records reach.</summary>
    public required LocalDate KnownDay { get; init; }

    /// <summary>Whether they reach a day at all. Where nobody says one and no record with a date could be read, <see cref="KnownDay"/> stands for nothing.</summary>
    public bool ReachesADay { get; init; } = true;

    /// <summary>Whether a row dated after the day the records reach is supposed to stand there: nothing that is judged is sure then.</summary>
    public bool SupposesLater { get; init; }

    /// <summary>Rows of what happened below this line stand in no file: they are supposed.</summary>
    public int SupposedBelow { get; init; } = int.MaxValue;

    /// <summary>What is wrong in the files, by file and line.</summary>
    public required ImmutableArray<Diagnostic> Problems { get; init; }

    /// <summary>What is wrong with single rows, in the order of <see cref="Problems"/>.</summary>
    public ImmutableArray<RowProblem> RowProblems { get; init; } = [];

    /// <summary><c>sha256:</c> and the hexadecimal digest over the files read.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>The animals' file as shown.</summary>
    public string AnimalsFile { get; init; } = "animals.csv";

    /// <summary>The events' file as shown.</summary>
    public string EventsFile { get; init; } = "events.csv";

    /// <summary>Where the rows of sources stand; null for the landed files.</summary>
    internal SourcePlaces? Places { get; init; }

    /// <summary>What rows of open sheets would write: each is in doubt until it is on record, or said not to have been done.</summary>
    public ImmutableArray<OpenRow> OpenRows { get; init; } = [];

    /// <summary>The farm's embryos.</summary>
    public EmbryoBook Embryos { get; init; } = EmbryoBook.None;

    /// <summary>Whether the ledger of sheets was changed, or is gone though rows name its sheets.</summary>
    public bool LedgerIsBroken { get; init; }

    /// <summary>Where a row of what happened stands.</summary>
    /// <param name="line">As runs and doubts name it.</param>
    public RecordPlace EventPlace(int line) => line < 0 && -1 - line < OpenRows.Length ? new RecordPlace($"sheet {OpenRows[-1 - line].Sheet.Number}", OpenRows[-1 - line].Row.Row)
        : line < int.MinValue / 2 ? AnimalPlace(line - int.MinValue)
        : line > SupposedBelow ? new RecordPlace("supposed", line - SupposedBelow) : Places?.Of(ofAnimals: false, line) ?? new RecordPlace(EventsFile, line);

    /// <summary>Where a row of an animal stands.</summary>
    /// <param name="line">As <see cref="AnimalLines"/> names it.</param>
    public RecordPlace AnimalPlace(int line) => Places?.Of(ofAnimals: true, line) ?? new RecordPlace(AnimalsFile, line);

    /// <summary>What about the records is not believed.</summary>
    public ImmutableArray<Doubted> Doubted { get; init; } = [];

    /// <summary>Words for what happened that the farm leaves out, and that stand on record.</summary>
    public ImmutableArray<WordLeftOut> WordsLeftOut { get; init; } = [];

    /// <summary>Headings of columns that nobody reads.</summary>
    public ImmutableArray<string> HeadingsNotRead { get; init; } = [];

    /// <summary>Headings of columns that nobody reads, and whose cells tell of calves: what was found, or days to come.</summary>
    public ImmutableArray<string> HeadingsThatTell { get; init; } = [];

    /// <summary>Files that lie beside those that are read, hold the same columns and say more, as shown.</summary>
    public ImmutableArray<string> FilesNotRead { get; init; } = [];

    /// <summary>Reads the same records again, as if some rows stood in them, or did not; null for a herd that was not read. Its promises are as written, not yet held against the records.</summary>
    public Func<Reading.Supposed, Herd>? ReadAgain { get; init; }

    /// <summary>The same herd with other promises.</summary>
    /// <param name="coverage">What may be taken as complete.</param>
    /// <param name="doubted">What is not believed.</param>
    public Herd With(Coverage coverage, ImmutableArray<Doubted> doubted) => With(Runs, coverage, doubted, ParityIsDoubted);

    /// <summary>The same herd with other entries.</summary>
    /// <param name="runs">By kind id.</param>
    /// <param name="coverage">What may be taken as complete.</param>
    public Herd With(KindRun[] runs, Coverage coverage) => With(runs, coverage, Doubted, ParityIsDoubted);

    /// <summary>The same herd with entries that are only supposed.</summary>
    /// <param name="runs">By kind id.</param>
    /// <param name="later">Whether one is dated after the day the records reach.</param>
    internal Herd Supposing(KindRun[] runs, bool later) => With(runs, Coverage, Doubted, ParityIsDoubted, later);

    /// <summary>The same herd, where parities speak against calvings.</summary>
    /// <param name="coverage">What may be taken as complete.</param>
    /// <param name="parityIsDoubted">By animal.</param>
    public Herd With(Coverage coverage, bool[] parityIsDoubted) => With(Runs, coverage, Doubted, parityIsDoubted);

    /// <summary>The same herd with other doubts.</summary>
    public Herd With(IEnumerable<Doubted> doubted) => With(Runs, Coverage, [.. doubted], ParityIsDoubted);

    private Herd With(KindRun[] runs, Coverage coverage, ImmutableArray<Doubted> doubted, bool[] parityIsDoubted, bool supposesLater = false) => new()
    {
        Vocabulary = Vocabulary,
        Numbers = Numbers,
        AlsoNumbers = AlsoNumbers,
        Sexes = Sexes,
        BornEarliest = BornEarliest,
        BornLatest = BornLatest,
        BirthIsUnreadable = BirthIsUnreadable,
        RecordedParity = RecordedParity,
        ParityOn = ParityOn,
        Today = Today,
        ParityIsDoubted = parityIsDoubted,
        AnimalLines = AnimalLines,
        AnimalsWithoutNumber = AnimalsWithoutNumber,
        Facts = Facts,
        Runs = runs,
        MobRuns = MobRuns,
        GroupRuns = GroupRuns,
        OwnRuns = OwnRuns,
        MobRows = MobRows,
        Details = Details,
        Mobs = Mobs,
        Membership = Membership,
        Coverage = FilteredCoverage.Following(Vocabulary, coverage),
        KnownDay = KnownDay,
        ReachesADay = ReachesADay,
        SupposesLater = SupposesLater || supposesLater,
        SupposedBelow = SupposedBelow,
        Problems = Problems,
        RowProblems = RowProblems,
        Doubted = doubted,
        Fingerprint = Fingerprint,
        AnimalsFile = AnimalsFile,
        EventsFile = EventsFile,
        Places = Places,
        HeadingsNotRead = HeadingsNotRead,
        WordsLeftOut = WordsLeftOut,
        HeadingsThatTell = HeadingsThatTell,
        FilesNotRead = FilesNotRead,
        ReadAgain = ReadAgain,
        OpenRows = OpenRows,
        Embryos = Embryos,
        LedgerIsBroken = LedgerIsBroken,
    };

    /// <summary>The day that her parity is of; <see cref="Day.Start"/> where it could not be read.</summary>
    public int DayOfParity(int animal) => ParityOn.Length == 0 || ParityOn[animal] == Day.End ? Day.Number(Today ?? KnownDay) : ParityOn[animal];

    /// <summary>Her own entries of a kind: without those of her mob's.</summary>
    public KindRun OwnRun(int kind) => (OwnRuns.Length == 0 ? null : OwnRuns[kind]) ?? Runs[kind];

    /// <summary>Results of a mob or the herd; null for none.</summary>
    public GroupRun? GroupRun(int kind) => GroupRuns.Length == 0 ? null : GroupRuns[kind];

    /// <summary>The place of the animal with this number; -1 where there is none.</summary>
    public int Find(string number)
    {
        if (_places is null)
        {
            var places = new Dictionary<string, int>(Numbers.Length, StringComparer.Ordinal);
            for (var i = 0; i < Numbers.Length; i++)
            {
                places[Numbers[i]] = i;
            }

            foreach (var (also, place) in AlsoNumbers)
            {
                places[also] = place;
            }

            _places = places;
        }

        return _places.GetValueOrDefault(number, -1);
    }
}
