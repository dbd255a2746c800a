using Byrelaw.Planning.Forecasting;
using Byrelaw.Planning.Pairing;

namespace Byrelaw.Reporting.Sheets;

/// <summary>The run sheet of a day of transfer: which straw into which cow, read aloud and read back.</summary>
internal static class RunSheetPage
{
    private const string Sides = $"{DrawnPage.Box} L {DrawnPage.Box} R {DrawnPage.Box} none";

    private static readonly string[] Hands =
    [
        "The straw is read aloud and read back by a second person, who writes it down. Not the same: STOP.",
        "No corpus luteum: no embryo, and no straw is thawed before its cow is ticked. The side used is the side felt.",
        "Lame, sick, thin or distressed: home, whatever stands here.",
        "Liquid nitrogen: gloves, goggles, open doors. Sedation and every procedure are for a licensed vet to order; the law of the place says who may do what.",
    ];

    public static Page Of(NumberedRunSheet sheet) => new(sheet.FileName, Title(sheet), Head(sheet),
    [
        Main(sheet, new DocumentBuilder().Heading(1, Title(sheet))).As("sheet run"),
        new DocumentBuilder().Heading(2, "Cautions").Bullets(SafetyNotes.General.Where(note => note != SafetyNotes.Prostaglandin)).As("cautions"),
    ]);

    /// <summary>The same for a terminal, but for the general cautions.</summary>
    public static string OnTerminal(NumberedRunSheet sheet, Ink ink) =>
        Main(sheet, new DocumentBuilder().Heading(1, Title(sheet)).Sentence(Head(sheet).InALine)).Sentence(Page.Foot).OnTerminal(ink);

    private static DocumentBuilder Main(NumberedRunSheet sheet, DocumentBuilder part)
    {
        var (run, day) = (sheet.Drawn, sheet.Drawn.Day);
        part.Sentence(sheet.IsRehearsal ? Wording.Bold("REHEARSAL: nobody is handled or given an embryo by this paper. It stands in no ledger.") : "")
            .Sentence(run.Replaces.IsEmpty ? "" : $"Replaces {Phrases.And([.. run.Replaces])}: if {(run.Replaces.Length == 1 ? "that" : "one of them")} was used, record it first.")
            .Sentence(Counts(day), Tone.Lead)
            .Sentence(SheetWords.InCalf(day.InCalf, run.Rows.Select(row => row.Number)))
            .Bullets(Checks(day))
            .Gap().Table(Race(run, "In race order", run.Rows.Where(row => row.Pair is not null)))
            .Bullets(Rejected(day))
            .Gap().Table(Race(run, "Waiting, the best first: a row without an embryo is filled in by hand", run.Rows.Where(row => row is { Pair: null, Recipient: not null })))
            .Gap().Table(TakenOff(run));
        MoreWaiting(part, run);
        part.Bullets(Hands)
            .Sentence($"Vet or technician: {DrawnPage.Blank} Read back by: {DrawnPage.Blank}")
            .Sentence($"Sedation, if any: product, batch, expires: {DrawnPage.Blank} Ordered by: {DrawnPage.Blank} Milk and meat withheld until: {DrawnPage.Blank}");
        HandOver(part, day);
        Reasons(part, day);
        return part.Gap()
            .Sentence("Every row comes back: the embryo that went in, or why none did. Until it is on record, she may be in calf and the embryo is offered to nobody.")
            .Sentence($"To write it down: fill in {sheet.FileName}.csv (or the .xlsx), then byrelaw record PROGRAMME {sheet.FileName}.csv{(sheet.IsRehearsal ? " --out COPY" : "")}.");
    }

    private static string Title(NumberedRunSheet sheet) =>
        $"{(sheet.IsRehearsal ? $"{NumberedSheet.Rehearsal} · " : "")}Run sheet · {Dates.WithWeekday(sheet.Drawn.Day.Day)} · session {sheet.Drawn.Day.Session.Number} · {sheet.Number[(sheet.IsRehearsal ? NumberedSheet.Rehearsal.Length + 1 : 0)..]}";

    private static PageHead Head(NumberedRunSheet sheet)
    {
        var draft = sheet.Drawn.Day.Draft;
        var (fact, said) = (ReachWords.Fact(draft.Herd), draft.Rulebook.Records?.RecordsTo is null ? "" : sheet.By is { } by ? $", said by {by}" : ", said for this run");
        return new PageHead(draft.Rulebook.Programme!.Name, fact with { Value = fact.Value + said }, new("void after", Dates.Long(sheet.Drawn.Day.Day))) { Devices = DeviceWords.Of(draft), HoldsTo = sheet.Drawn.Day.Day };
    }

    /// <summary>How many pairs, of which embryos, and what is expected of them.</summary>
    private static string Counts(DayOfTransfer day)
    {
        if (day.Pairs.IsEmpty)
        {
            return day.Embryos.IsEmpty ? $"No embryo is on record as to be had: {Numbers.Count(day.Waiting.Length, "recipient fits", "recipients fit")} the day, and the embryo is filled in by hand."
                : "No pair: no embryo that is to be had fits a recipient of the day.";
        }

        var (fresh, first) = (day.Pairs.Count(pair => pair.Embryo.IsFresh), day.Pairs.Count(pair => pair.Recipient.IsExaminedFirst));
        var straws = day.Pairs.Length - fresh;
        var made = Phrases.And([.. new[] { fresh > 0 ? Numbers.Count(fresh, "fresh embryo", "fresh embryos") : "", straws > 0 ? Numbers.Count(straws, "straw from the tank", "straws from the tank") : "" }.Where(text => text.Length > 0)]);
        return $"{Numbers.Count(day.Pairs.Length, "pair", "pairs")}: {made}. {(first == 0 ? "All were examined." : $"{first} to be examined first.")} {ToExpect(day)}";
    }

    private static string ToExpect(DayOfTransfer day)
    {
        if (!day.HasRates)
        {
            return "No chances were used: the programme has no rates for all of them.";
        }

        var wanted = Expected.Of([.. day.Pairs.Select(pair => pair.Wanted ?? 0)]);
        var pregnant = day.Goal > Stage.Pregnant ? $"{ChanceWords.Mean(day.Pairs.Sum(pair => pair.Pregnant ?? 0))} pregnant, " : "";
        return $"Expected: {pregnant}{PairWords.Wanted(day.Goal, wanted.Mean)} (8 in 10: {wanted.From} to {wanted.To}).";
    }

    private static IEnumerable<string> Checks(DayOfTransfer day)
    {
        yield return $"{DrawnPage.Box} Since the book was written nobody was served, ill, treated or moved. Signed: {DrawnPage.Blank}";
        yield return $"{DrawnPage.Box} Embryos in the book: {day.Embryos.Length}. Straws counted: {DrawnPage.Blank} Not the same: no cow is yarded until it is known why. Arrived at {DrawnPage.Blank} °C, hours out {DrawnPage.Blank}";
        yield return $"{DrawnPage.Box} Tank {DrawnPage.Blank} cm. {DrawnPage.Box} Thaw bath {DrawnPage.Blank} °C";
    }

    private static Table Race(RunSheet run, string caption, IEnumerable<RunRow> rows)
    {
        var table = new Table(caption, "row", "race", "number", "heat", "corpus luteum", "embryo, straw", "straw read, read back by", "side used", "ease of passing", "not done: why") { IsForTheYards = true };
        foreach (var row in rows)
        {
            table.Add(
                $"{row.Row}", DrawnPage.Box, $"{Wording.Bold(row.Number)} {Wording.Faint(Particulars.Tag(run.Day.Draft.Herd, row.Recipient!.Animal))}", PairWords.HerDay(run.Day, row.Recipient),
                Felt(row.Recipient), row.Pair is { } pair ? PairWords.EmbryoAndStraw(pair.Embryo) : DrawnPage.Blank, $"{DrawnPage.Blank} / {DrawnPage.Blank}",
                "L R", "1 2 3", DrawnPage.Blank);
        }

        return table;
    }

    /// <summary>Who is examined first has nothing thawed for her before.</summary>
    private static Wording Felt(Recipient recipient) => recipient.IsExaminedFirst ? (Wording)$"{Wording.Bold("FIRST")} {Sides}" : Sides;

    /// <summary>Where an embryo goes if its recipient is rejected; all that go to the same one in one line.</summary>
    private static IEnumerable<string> Rejected(DayOfTransfer day)
    {
        foreach (var pairs in day.Pairs.GroupBy(pair => (Instead: day.Instead(pair), IsStraw: day.Instead(pair) is null && !pair.Embryo.IsFresh)))
        {
            var numbers = Phrases.Or([.. pairs.Select(pair => pair.Recipient.Number)]);
            var embryo = pairs.Count() == 1 ? pairs.First().Embryo.Label : "its embryo";
            yield return pairs.Key.Instead is { } instead ? $"If {numbers} is rejected: {embryo} to {instead.Number} (waiting, day {instead.Day}{(instead.IsExaminedFirst ? ", examine first" : "")}); once she is used, to the next who waits."
                : pairs.Key.IsStraw ? $"If {numbers} is rejected: nobody who waits fits {embryo}, and the straw is not thawed."
                : $"If {numbers} is rejected: nobody who waits fits {embryo}. The embryologist decides: freeze if the laboratory can, or discard.";
        }
    }

    private static Table TakenOff(RunSheet run)
    {
        var table = new Table("Taken off: on an earlier sheet of this day. What was done is to be said here", "row", "number", "embryo", "was", "was it done?", "why not") { IsForTheYards = true };
        foreach (var row in run.Rows.Where(row => row.TakenOff is not null))
        {
            table.Add($"{row.Row}", Wording.Bold(row.Number), row.Embryo ?? "", row.TakenOff!, "yes no", DrawnPage.Blank);
        }

        return table;
    }

    /// <summary>Who fits besides, and whose heat fits and who is not used.</summary>
    private static void MoreWaiting(DocumentBuilder part, RunSheet run)
    {
        var (day, more) = (run.Day, run.Day.Waiting.Skip(run.Day.Pairs.Length).Select(recipient => recipient.Number).ToList());
        part.Sentence(more.Count == 0 ? "" : $"Fit the day too, and have no row: {string.Join(", ", more)}.")
            .Sentence(day.Waiting.IsEmpty ? "" : "Who waits and is not used goes back to mating.");
        if (!day.Out.IsEmpty)
        {
            part.Sentence(Wording.Bold("Not today, though the heat fits")).Bullets(day.Out.Select(not => $"{not.Number}: {PairWords.WhyNot(day, not)}."));
        }
    }

    /// <summary>The morning's embryos, to be counted before a cow is yarded.</summary>
    private static void HandOver(DocumentBuilder part, DayOfTransfer day)
    {
        var table = new Table("Every embryo in the book that is to be had today", "embryo", "straw", "donor, sire", "made", "for", "seen") { IsForTheYards = true };
        foreach (var embryo in day.Embryos)
        {
            var pair = day.Pairs.FirstOrDefault(one => one.Embryo == embryo);
            table.Add(PairWords.Embryo(embryo), PairWords.Straw(embryo), PairWords.Parents(embryo), PairWords.Made(embryo), pair?.Recipient.Number ?? "left over", DrawnPage.Box);
        }

        if (!table.IsEmpty)
        {
            part.Heading(2, "Hand-over, before a cow is yarded").Table(table)
                .Bullets(day.LeftOver.Select(left => $"{left.Embryo.Label} is left over: {PairWords.WhyLeft(left)}. {(left.Embryo.IsFresh ? "The embryologist decides: freeze if the laboratory can, or discard; nothing is frozen in a yard." : "It stays in the tank.")}"));
        }
    }

    private static void Reasons(DocumentBuilder part, DayOfTransfer day)
    {
        if (!day.Pairs.IsEmpty)
        {
            part.Heading(2, "Why these pairs").Bullets(day.Pairs.Select(pair =>
                $"{pair.Embryo.Label} into {pair.Recipient.Number}: {PairWords.Made(pair.Embryo)}, her day {pair.Recipient.Day}; {PairWords.NextBest(day, pair)}."));
        }
    }
}
