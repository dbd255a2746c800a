using System.Security.Cryptography;
using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Reading;

/// <summary>One reading of a folder of records, from bytes to herd.</summary>
internal sealed class HerdReading
{
    private readonly RecordInput _input;
    private readonly RecordFile _animalsFile;
    private readonly RecordFile _eventsFile;
    private readonly ReadingOptions _options;
    private ImmutableArray<RowProblem> _rowProblems = [];
    private readonly List<Diagnostic> _animalProblems = [];
    private readonly List<Diagnostic> _eventProblems = [];
    private readonly List<Diagnostic> _embryoProblems = [];
    private readonly List<(RowDoubt Why, RowInDoubt Row)> _doubted = [];
    private readonly MobNames _mobs = new();
    private readonly Supposed _supposed;
    private EventStage[] _supposedStages = [];
    private int _supposedAfter = int.MaxValue;
    private List<Gap> _gaps = [];
    private Func<Supposed, Herd>? _again;

    private HerdReading(RecordInput input, ReadingOptions options, Supposed? supposed)
    {
        _supposed = supposed ?? new Supposed();
        _input = input;
        _animalsFile = input.Animals;
        _eventsFile = input.Events;
        _options = options;
    }

    /// <summary>The herd.</summary>
    public Herd Herd { get; private set; } = null!;

    /// <summary>The stages of reading, for what only a check of the records asks.</summary>
    public EventStage[] Stages { get; private set; } = [];

    /// <summary>Where the columns of the events' file stand; null where nothing in it can be read.</summary>
    public EventColumns? EventColumns { get; private set; }

    /// <summary>Reads both files.</summary>
    public static HerdReading Read(
        RecordInput input, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn, ReadingOptions options, Supposed? supposed = null)
    {
        var reading = new HerdReading(input, options, supposed) { _again = other => Read(input, vocabulary, keeping, knownOn, options, other).Herd };
        reading.Read(vocabulary, keeping, knownOn);
        return reading;
    }

    private void Read(Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn)
    {
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var stage = ReadAnimals(vocabulary, keeping, digest);
        _doubted.AddRange(stage?.Doubted ?? []);
        var animals = AnimalTable.Of(stage ?? new AnimalStage([.. vocabulary.Facts.Select(fact => new FactStage(fact, -1, false))]), keeping);
        var doubles = Doubles.Of(animals, vocabulary, keeping);
        var room = Room.For(_eventsFile.Length);
        room.Make();
        if (stage is null)
        {
            SuspendAll();
        }

        ReadEvents(vocabulary, keeping, knownOn, stage is null || _input.HasNoAnimals ? null : animals, digest);
        var ofEmbryos = new EmbryoRows(vocabulary, Stages, [.. EventColumns?.Unknown ?? [], .. _input.HeadingsNotRead]).Find();
        (keeping, var isBroken) = LedgerTrust.Of(keeping, _input.Ledger, [.. Stages, .. _supposedStages], vocabulary);
        var (sheets, today) = SheetsKnownOf(keeping, knownOn);
        var days = KnownDays.Of(keeping, knownOn, LatestEntries(), animals.Rows);
        var late = LateProblems.TakeOutBirths(days.Today, animals);
        var builder = new HerdBuilder(vocabulary, animals.Rows, [.. Stages, .. _supposedStages], _gaps, days.KnownDay, doubles, _supposedAfter, OfSheets(keeping)) { Last = isBroken ? [] : _input.Last };

        // Rows that cannot be true are taken out by now: they close nothing.
        var open = OpenRows.Of(sheets, today, number => animals.Places.TryFind(Encoding.UTF8.GetBytes(number), out var place) ? place : -1, [.. Stages, .. _supposedStages], vocabulary);
        var embryos = EmbryoReading.Read(
            _input, animals, vocabulary, Day.Date(keeping?.Today is { } now ? Day.Number(now) : days.Today), knownOn, ofEmbryos, EmbryoReading.MayBe(Stages.SelectMany(stage => stage.Gaps).Concat(_gaps), open, vocabulary), _embryoProblems);
        builder.Doubt(OpenRows.Gaps(open, today));
        builder.Doubt(HintsOf(animals.Rows, vocabulary));
        builder.Build(_mobs.Names, keeping, Blanks(keeping), HasColumn, room, animals.Places);
        _animalProblems.AddRange(late.OfAnimals(animals, days.Today, FindAnimalLines));
        _animalProblems.AddRange(LateProblems.OfSameAnimals(animals, FindAnimalLines));
        _eventProblems.AddRange(Stages.Concat(_supposedStages).SelectMany(part => part.Problems));
        if (EventColumns is { } columns)
        {
            _eventProblems.AddRange(LateProblems.OfEvents(builder, columns, vocabulary, animals, _mobs.Names, days.IsFarAhead, FindEventLines));
            _eventProblems.AddRange(EmbryoReading.Problems(embryos, columns, FindEventLines, line => _input.Places?.Of(ofAnimals: false, line) ?? new RecordPlace(_eventsFile.Shown, line)));
        }

        _doubted.AddRange(late.BornTooEarly.Select(line => (RowDoubt.BornLongAgo, new RowInDoubt(-1, Day.Start, line, IsOfAnimals: true))));
        _animalProblems.AddRange(LateProblems.OfMobs(builder.SlippedMobs, ofAnimals: true, animals.Columns?.Map["mob"] ?? 0, FindAnimalLines));
        _eventProblems.AddRange(LateProblems.OfMobs(builder.SlippedMobs, ofAnimals: false, EventColumns?.Value ?? 0, FindEventLines));
        _doubted.AddRange(builder.SlippedMobs.Select(mob => (RowDoubt.MobNamedOnce, mob.Row)));
        _doubted.AddRange(builder.SameSample.Select(row => (RowDoubt.SameSample, new RowInDoubt(-1, row.Day, row.Line))));
        _doubted.AddRange(builder.Wrong.Select(row => (row.IsSteer ? RowDoubt.SteerAsBull : row.Left is null ? RowDoubt.NotForMales : RowDoubt.AfterLeaving, new RowInDoubt(row.Animal, row.Day, row.Line))));
        _doubted.AddRange(builder.CalvedAgainSoon.Select(row => (RowDoubt.CalvedAgainSoon, row)));
        _doubted.AddRange(builder.EndsWithoutStart.Select(row => (RowDoubt.EndWithoutStart, row)));
        if (days.IsFarAhead)
        {
            _doubted.AddRange(builder.Impossible.Where(row => row.Born is null).Select(row => (RowDoubt.FarAhead, new RowInDoubt(row.Gap.Animal, Day.Start, row.Gap.Line))));
        }

        var placed = new PlacedProblems(_input.Places, animals, EventColumns);
        _rowProblems = [.. placed.Of(_animalProblems, ofAnimals: true), .. placed.Of(_eventProblems, ofAnimals: false)];
        Herd = HerdOf(vocabulary, animals, builder, days, doubles, digest, open, embryos, isBroken, keeping);
    }

    /// <summary>What animals' cells tell of besides may have been on any day.</summary>
    private static IEnumerable<Gap> HintsOf(AnimalRow[] rows, Vocabulary vocabulary) =>
        from animal in Enumerable.Range(0, rows.Length)
        where rows[animal].Hints != 0
        from kind in AnimalHints.KindsIn(rows[animal].Hints, vocabulary)
        select new Gap(animal, kind.Id, Day.Start, Day.End, Gap.OfAnimals(rows[animal].Line)) { IsHint = true };

    /// <summary>What the farm says that blank cells mean; not of a detail without a column where another stands whose heading nobody knows: that may be it.</summary>
    private ImmutableArray<BlankOf> Blanks(RecordKeeping? keeping) =>
        [.. (keeping?.Blanks ?? []).Where(blank => EventColumns is not { Unknown.IsEmpty: false } || HasColumn(blank.Kind, blank.Place))];

    private bool HasColumn(Kind kind, int detail) => EventColumns is { } columns && columns.Details.Any(column => column.DetailOf[kind.Id] == detail);

    private AnimalStage? ReadAnimals(Vocabulary vocabulary, RecordKeeping? keeping, IncrementalHash digest)
    {
        RecordsDigest.Begin(digest, _animalsFile);
        using var stream = _animalsFile.Open();
        var blocks = new LineBlocks(stream, _options.BlockSize, digest);
        if (!_animalsFile.IsUtf16())
        {
            return AnimalFile.Read(blocks, _animalsFile.Shown, vocabulary, keeping, _mobs, _animalProblems);
        }

        _animalProblems.Add(Problems.HeadingProblems.Utf16(_animalsFile.Shown));
        PassOver(blocks);
        return null;
    }

    private void ReadEvents(Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn, AnimalTable? animals, IncrementalHash digest)
    {
        RecordsDigest.Begin(digest, _eventsFile);
        using var stream = _eventsFile.Open();
        var blocks = new LineBlocks(stream, _options.BlockSize, digest);
        if (_eventsFile.IsUtf16())
        {
            _eventProblems.Add(Problems.HeadingProblems.Utf16(_eventsFile.Shown));
        }
        else
        {
            EventColumns = EventFile.ReadHeading(blocks, _eventsFile.Shown, vocabulary, _eventProblems);
        }

        // Without animals every row would be about an unknown one: that the animals cannot be read is said once.
        if (EventColumns is not null && animals is not null)
        {
            var seenUntil = knownOn is { } on ? Day.Number(on) : Day.End;
            Stages = EventFile.Read(
                blocks,
                new EventReading(_eventsFile.Shown, _animalsFile.Shown, EventColumns, vocabulary, [.. keeping?.LeaveOut.Select(left => left.Word) ?? []], animals.Places, _mobs, seenUntil)
                {
                    WithoutLines = _supposed.WithoutLines,
                    SaidNot = keeping?.LeaveOut ?? [],
                    Births = animals.Rows,
                    Today = keeping?.Today is { } today ? Day.Number(today) : Day.End,
                },
                _eventsFile.Length < _options.BlockSize ? 1 : _options.Threads);
            if (!_supposed.Rows.IsEmpty)
            {
                _supposedAfter = blocks.Lines;
                _supposedStages = _supposed.Read(_supposedAfter, new EventReading(_eventsFile.Shown, _animalsFile.Shown, EventColumns, vocabulary, [], animals.Places, _mobs, Day.End) { Births = animals.Rows }, _options.BlockSize, _eventProblems);
            }
        }
        else
        {
            SuspendAll();
        }

        PassOver(blocks);
    }

    /// <summary>A file that cannot be read might have said anything.</summary>
    private void SuspendAll() => _gaps = [new Gap(-1, -1, Day.Start, Day.End, 1)];

    private Herd HerdOf(Vocabulary vocabulary, AnimalTable animals, HerdBuilder builder, KnownDays days, Doubles doubles, IncrementalHash digest, ImmutableArray<OpenRow> open, EmbryoBook embryos, bool isBroken, RecordKeeping? keeping) => new()
    {
        Vocabulary = vocabulary,
        Numbers = animals.Numbers,
        AlsoNumbers = animals.Also,
        Sexes = Array.ConvertAll(animals.Rows, row => row.Sex),
        BornEarliest = Array.ConvertAll(animals.Rows, row => row.BornFirst),
        BornLatest = Array.ConvertAll(animals.Rows, row => row.BornLast),
        BirthIsUnreadable = Array.ConvertAll(animals.Rows, row => row.BirthIsUnreadable),
        RecordedParity = Array.ConvertAll(animals.Rows, row => row.Parity),
        ParityOn = Array.ConvertAll(animals.Rows, row => row.ParityOn),
        Today = Day.Date(days.Today),
        AnimalLines = Array.ConvertAll(animals.Rows, row => row.Line),
        Facts = animals.Facts,
        AnimalsWithoutNumber = animals.WithoutNumber,
        Runs = builder.Runs,
        MobRuns = builder.MobRuns,
        GroupRuns = builder.GroupRuns,
        OwnRuns = builder.OwnRuns,
        MobRows = builder.MobRows,
        Details = builder.Details,
        Mobs = builder.Mobs,
        Membership = builder.Membership,
        Coverage = builder.Coverage,
        KnownDay = Day.Date(builder.KnownDay),
        ReachesADay = days.IsReached,
        SupposedBelow = _supposed.Rows.IsEmpty ? int.MaxValue : _supposedAfter,
        SupposesLater = _supposed.Rows.Any(row => Day.Number(row.Date) > builder.KnownDay),
        Problems = [.. _input.Problems, .. _rowProblems.Select(row => row.Problem), .. _embryoProblems],
        RowProblems = _rowProblems,
        Places = _input.Places,
        HeadingsNotRead = [.. _input.HeadingsNotRead, .. animals.Columns?.Map.UnknownHeads ?? [], .. EventColumns?.Unknown ?? []],
        WordsLeftOut = WordsLeftOut(keeping),
        HeadingsThatTell = _input.HeadingsThatTell,
        FilesNotRead = _input.FilesNotRead,
        Fingerprint = RecordsDigest.Of(digest, _input),
        OpenRows = open,
        Embryos = embryos,
        LedgerIsBroken = isBroken,
        AnimalsFile = _animalsFile.Shown,
        EventsFile = _eventsFile.Shown,
        Doubted = DoubtedRows.Of(_doubted, doubles, Stages, _supposedStages, _input.LeftOut),
        ReadAgain = _again,
    };

    /// <summary>As known on an earlier day, sheets written since are not known of; the day is that day, else today. Sheets that are drawn again are not held against the new ones.</summary>
    private (ImmutableArray<Sheet> Sheets, int Today) SheetsKnownOf(RecordKeeping? keeping, LocalDate? knownOn)
    {
        ImmutableArray<Sheet> sheets = [.. (_input.Ledger?.Sheets ?? []).Where(sheet => keeping?.Drawing is not { } drawing || !drawing.Replaces(sheet.For, sheet.Work, sheet.Programme))];
        return knownOn is { } day ? ([.. sheets.Where(sheet => sheet.Written <= day)], Day.Number(day)) : (sheets, keeping?.Today is { } today ? Day.Number(today) : Day.End);
    }

    /// <summary>Lines of rows that are of sheets; of none that is dated after today.</summary>
    private HashSet<int> OfSheets(RecordKeeping? keeping)
    {
        var today = keeping?.Today is { } day ? Day.Number(day) : Day.End;
        return [.. Stages.SelectMany(stage => stage.SheetRows).Where(row => row.Day <= today).Select(row => row.Line)];
    }

    private LatestDays LatestEntries()
    {
        var latest = new LatestDays();
        foreach (var stage in Stages)
        {
            latest.Add(stage.LatestEntries);
        }

        return latest;
    }

    private Dictionary<int, RowText> FindEventLines(IEnumerable<int> lines) => _supposed.Find(_eventsFile, lines, _supposedAfter, hasSupposed: _supposedStages.Length > 0, _options.BlockSize);

    private Dictionary<int, RowText> FindAnimalLines(IEnumerable<int> lines) => LineFinder.Find(_animalsFile, lines, _options.BlockSize);

    /// <summary>Words of the farm's own files, then those of the landed one.</summary>
    private ImmutableArray<WordLeftOut> WordsLeftOut(RecordKeeping? keeping) =>
    [
        .. _input.WordsLeftOut,
        .. (keeping?.LeaveOut ?? []).Select((left, place) => new WordLeftOut(left.Word, Stages.Sum(stage => stage.LeftOut[place]))).Where(left => left.Rows > 0),
    ];

    /// <summary>Feeds the rest of a file to the digest.</summary>
    private static void PassOver(LineBlocks blocks)
    {
        var block = new LineBlock();
        while (blocks.TryNext(block))
        {
        }
    }
}
