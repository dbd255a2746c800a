namespace Byrelaw.Reporting.Tests.Invented;

/// <summary>Every sort of doubt about the invented herd, made up by hand.</summary>
internal static class InventedDoubts
{
    private static readonly InventedWords Words = new(text => text);
    private static readonly SourceSpan Span = new(new SourceFile("vocabulary.byre", "\n\nexpectation\n"), 2, 11);
    private static readonly EventKind BullIn = new("bull in", [], Span) { Id = 90 };
    private static readonly EventKind BullOut = new("bull out", [], Span) { Id = 91 };

    private static readonly EntryExpectation Father = new()
    {
        Name = "A calf has a father",
        Else = [Words.Mating, Words.Transfer, BullIn, BullOut],
        Span = Span,
        Every = new Counted(Words.Calving),
        From = new TimeLength(200, TimeUnit.Days),
        To = new TimeLength(320, TimeUnit.Days),
        Others = [new Counted(Words.Mating), new Counted(Words.Transfer)],
        Spells = [new Spell("running with bull", BullIn, BullOut, Span)],
        OverPercent = 2,
    };

    private static readonly EntryExpectation Ends = new()
    {
        Name = "A pregnancy ends",
        Else = [Words.Calving, Words.PregnancyTest],
        Span = Span,
        IsBefore = true,
        ForHer = true,
        Every = new Counted(Words.PregnancyTest, 0),
        From = new TimeLength(0, TimeUnit.Months),
        To = new TimeLength(10, TimeUnit.Months),
        Others = [new Counted(Words.Calving), new Counted(Words.PregnancyTest, 1)],
    };

    private static readonly RateExpectation Lameness = new()
    {
        Name = "Metritis is written down",
        Else = [Words.Metritis],
        Span = Span,
        Kind = Words.Metritis,
        Count = 1,
        Cows = 20,
    };

    /// <summary>Six calvings of five animals have no father.</summary>
    public static ExpectationFails Fails { get; } =
        new(Father, 48, [Entry(0, 10), Entry(1, 11), Entry(2, 12), Entry(3, 13), Entry(4, 14), Entry(4, 15)], 0, Father.Else);

    /// <summary>Each with a name.</summary>
    public static IReadOnlyList<(string Name, Doubted Doubt)> All { get; } =
    [
        ("fails", Fails),
        ("fails by one", new ExpectationFails(Father with { Spells = [] }, 10, [Entry(0, 10)], 0, [Words.Mating])),
        ("fails by rows that cannot be read", new ExpectationFails(Father, 12, [Entry(0, 10), Entry(-1, 20, isUnreadable: true), Entry(2, 21, isUnreadable: true)], 1, Father.Else)),
        ("fails by one row alone", new ExpectationFails(Father, 12, [Entry(-1, 20, isUnreadable: true)], 0, Father.Else)),
        ("fails but for a row that cannot be read", new ExpectationFails(Father with { IsOfOnePregnancy = true }, 12, [Entry(0, 10) with { ButFor = 17 }, Entry(2, 11) with { ButFor = 19 }], 0, Father.Else)),
        ("strained", new ExpectationStrained(Father, 100, [Entry(1, 11)], 0)),
        ("a number that no animal has", new NotListed([new NumberNotListed("1999", [new RowInDoubt(-1, 9000, 12), new RowInDoubt(-1, 9100, 15), new RowInDoubt(-1, 9200, 20)])])),
        ("two numbers that no animal has", new NotListed([
            new NumberNotListed("1999", [new RowInDoubt(-1, 9000, 12), new RowInDoubt(-1, 9100, 15), new RowInDoubt(-1, 9200, 20), new RowInDoubt(-1, 9201, 21)]),
            new NumberNotListed("A 7", [new RowInDoubt(-1, 9000, 13), new RowInDoubt(-1, 9100, 16), new RowInDoubt(-1, Day.Start, 19)])])),
        ("a word that no rule reads", new NotReadByRules([(new EventKind("hoof trim", [], Span) { Id = 92 }, 5)])),
        ("two words that no rule reads", new NotReadByRules([(new EventKind("hoof trim", [], Span) { Id = 92 }, 5), (BullIn, 1)])),
        ("a word that is left out", new NotReadByRules([]) { LeftOut = [new WordLeftOut("foot bath", 3)] }),
        ("a word that no rule reads and one that is left out", new NotReadByRules([(new EventKind("hoof trim", [], Span) { Id = 92 }, 5)]) { LeftOut = [new WordLeftOut("foot bath", 1)] }),
        ("waived", new ExpectationStrained(Father, 100, [], 1)),
        ("contradiction", new Contradictions(Ends, [Entry(2, 30)])),
        ("contradictions", new Contradictions(Ends, [Entry(2, 30), Entry(3, 31)])),
        ("none in many years", new TooFewEntries(Lameness, 0, 104.2, [Words.Metritis])),
        ("too few", new TooFewEntries(Lameness, 2, 240.7, [Words.Metritis])),
        ("unreadable", new ExpectationUnreadable(Father, [Words.Mating, Words.Transfer])),
        ("silent", new FallenSilent(Words.Mating, Number(2026, 8, 6), Number(2026, 9, 20), 0)),
        ("silent but for one day", new FallenSilent(Words.Mating, Number(2026, 8, 6), Number(2026, 9, 20), 1)),
        ("begun after trouble", new BegunAfterTrouble(Father, 3, 2, [Words.Mating, Words.Transfer])),
        ("none but one", new NoneButOne(Words.Transfer, 5, Number(2026, 5, 3), 40)),
        ("none but one that cannot be read", new NoneButOne(Words.Transfer, 5, Number(2026, 5, 3), 40) { IsUnreadable = true }),
        ("none but a male", new NoneButOne(BullIn, 6, Day.Start, 0)),
        ("nothing to reach", new NothingToReach(Words.Mating)),
        ("an empty book", new EmptyBook([Words.Mating, Words.Transfer])),
        ("a row left out", new RowsLeftOut("export.csv", "Event", "Foot trimming", 1)),
        ("rows left out", new RowsLeftOut("export.csv", "Event", "Foot trimming", 12)),
        ("overlooked", new MayBeOverlooked(new Hint("AI", Words.Mating, Span), Words.Mating)),
        ("overlooked and declared", new MayBeOverlooked(new Hint("covered", Words.Mating, Span), Words.Mating, OverlookedIn.RuleFile)),
        ("overlooked by a line of a source", new MayBeOverlooked(new Hint("Bull", Words.Mating, Span), Words.Mating, OverlookedIn.Bullet)),
        ("a heading overlooked", new MayBeOverlooked(new Hint("Served", Words.Mating, Span), Words.Mating, OverlookedIn.Heading)),
        ("a cell overlooked", new MayBeOverlooked(new Hint("P", Words.Mating, Span), Words.Mating, OverlookedIn.Cell)),
        ("a fact overlooked", new MayBeOverlooked(new Hint("in calf", Words.Mating, Span), Words.Mating, OverlookedIn.Fact)),
        ("a file not read", new FilesNotRead(["records/Events-2026.csv"], [Words.Mating, Words.Transfer])),
        ("files not read", new FilesNotRead(["records/events.csv.gz", "records/Events-2026.csv"], [Words.Mating])),
        ("two rows in one", Rows(RowDoubt.TwoInOne, Row(-1, 12), Row(-1, 15, dayOfAugust: 3))),
        ("a row of any day in another", Rows(RowDoubt.TwoInOne, new RowInDoubt(-1, Day.Start, 12))),
        ("a file breaks off", Rows(RowDoubt.FileBreaksOff, new RowInDoubt(-1, Day.Start, 60))),
        ("the animals break off", Rows(RowDoubt.FileBreaksOff, new RowInDoubt(-1, Day.Start, 9, IsOfAnimals: true))),
        ("last cell cut", Rows(RowDoubt.LastCellCut, Row(2, 60))),
        ("comma in a number", Rows(RowDoubt.CommaInNumber, Row(2, 30))),
        ("commas in numbers", Rows(RowDoubt.CommaInNumber, Row(2, 30), Row(2, 31), Row(3, 32), Row(3, 33), Row(3, 34))),
        ("far ahead", Rows(RowDoubt.FarAhead, new RowInDoubt(1, Day.Start, 22))),
        ("implausible", Rows(RowDoubt.Implausible, Row(2, 30))),
        ("implausible in both files", Rows(RowDoubt.Implausible, new RowInDoubt(-1, Day.Start, 4, IsOfAnimals: true), Row(2, 30), Row(3, 31))),
        ("born long ago", Rows(RowDoubt.BornLongAgo, new RowInDoubt(-1, Day.Start, 4, IsOfAnimals: true))),
        ("same sample", Rows(RowDoubt.SameSample, Row(-1, 30), Row(-1, 31))),
        ("not for males", Rows(RowDoubt.NotForMales, Row(6, 30))),
        ("a steer as a bull", Rows(RowDoubt.SteerAsBull, Row(6, 30))),
        ("after leaving", Rows(RowDoubt.AfterLeaving, Row(5, 30), Row(5, 31))),
        ("nobody can read whether she was bought", Rows(RowDoubt.OriginUnreadable, new RowInDoubt(2, Day.Start, 4, IsOfAnimals: true))),
        ("nobody can read whether they were bought", Rows(RowDoubt.OriginUnreadable, new RowInDoubt(2, Day.Start, 4, IsOfAnimals: true), new RowInDoubt(3, Day.Start, 5, IsOfAnimals: true))),
        ("bought without a day", Rows(RowDoubt.BoughtWithoutDay, new RowInDoubt(2, Day.Start, 4, IsOfAnimals: true))),
        ("in calf when she came", Rows(RowDoubt.InCalfWhenSheCame, Row(2, 14))),
        ("an end without its start", Rows(RowDoubt.EndWithoutStart, Row(2, 14))),
        ("ends without their starts", Rows(RowDoubt.EndWithoutStart, Row(2, 14), Row(3, 15))),
        ("a mob named once", Rows(RowDoubt.MobNamedOnce, Row(2, 14))),
        ("calved again soon", Rows(RowDoubt.CalvedAgainSoon, Row(2, 14))),
        ("several calved again soon", Rows(RowDoubt.CalvedAgainSoon, Row(2, 14), Row(3, 15))),
        ("mobs named once", Rows(RowDoubt.MobNamedOnce, new RowInDoubt(2, Day.Start, 4, IsOfAnimals: true), Row(3, 15))),
        ("parity unreadable", Rows(RowDoubt.ParityUnreadable, new RowInDoubt(2, Day.Start, 4, IsOfAnimals: true), new RowInDoubt(3, Day.Start, 5, IsOfAnimals: true))),
        ("parity too high", new ParityTooHigh([2])),
        ("parities too high", new ParityTooHigh([2, 4])),
        ("one identity", new TwoNumbers([new DoubleNumbers(0, 1, Likeness.Identity)])),
        ("numbers alike", new TwoNumbers([new DoubleNumbers(0, 1, Likeness.Identity), new DoubleNumbers(2, 3, Likeness.Number), new DoubleNumbers(2, 4, Likeness.Said)])),
    ];

    /// <summary>The invented draft with these doubts.</summary>
    public static Draft Draft(params ImmutableArray<Doubted> doubts)
    {
        var draft = InventedDraft.Make();
        return draft with { Herd = draft.Herd.With(draft.Herd.Coverage, doubts) };
    }

    private static Unexpected Entry(int animal, int line, bool isUnreadable = false) => new(animal, Number(2026, 8, 1), line, isUnreadable);

    private static RowsInDoubt Rows(RowDoubt why, params ImmutableArray<RowInDoubt> rows) => new(why, rows);

    private static RowInDoubt Row(int animal, int line, int dayOfAugust = 1) => new(animal, Number(2026, 8, dayOfAugust), line);

    private static int Number(int year, int month, int day) => Day.Number(new LocalDate(year, month, day));
}
