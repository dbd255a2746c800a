namespace Byrelaw.Reporting.Words;

/// <summary>What is doubted about the records, one sentence function for each sort of doubt.</summary>
public static class DoubtWords
{
    private const int RowsNamed = 4;

    /// <summary>Stands between a workbook and its sheet, where one of its sheets is told of.</summary>
    private const string SheetOf = ".xlsx, ";

    /// <summary>All doubts: first what may be the cause of others, then those that take promises away, of these the ones about most animals first.</summary>
    public static ImmutableArray<SaidDoubt> Of(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return [.. herd.Doubted.Select(doubt => Of(doubt, herd))
            .OrderBy(said => said.IsCauseOfOthers ? 0 : said.HeldBack.IsEmpty ? 2 : 1).ThenByDescending(said => said.Animals.Count)];
    }

    /// <summary><c>Nothing is doubted; 9 promises stand.</c></summary>
    public static string Nothing(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        // A timed heat goes by the promise of what was given: nobody made one of its own.
        var stand = herd.Coverage.Since.Where((since, kind) => since < Day.End && kind != herd.Vocabulary.TimedHeat?.Timed.Id).Count();
        var lines = Lines(herd);
        if (lines.Length == 0 && herd.OpenRows.IsEmpty)
        {
            return $"Nothing is doubted; {Numbers.Count(stand, "promise stands", "promises stand")}.";
        }

        var sheets = herd.OpenRows.IsEmpty ? "" : " What stands on sheets that are not on record may have been done, and holds back those who stand there.";
        return $"No promise is doubted; {Numbers.Count(stand, "promise stands", "promises stand")}.{(lines.Length == 0 ? "" : " " + lines)}{sheets}";
    }

    /// <summary>How many lines cannot be trusted, and whom they hold back; empty for none. It stands below all other doubts too: what is wrong with each is told with the problems.</summary>
    public static string Lines(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var unread = herd.RowProblems.Where(row => row.Problem.Severity == Severity.Error).Select(row => (row.IsOfAnimals, row.Line)).Distinct().Count();
        return unread == 0 ? "" : $"{Numbers.Count(unread, "line", "lines")} cannot be trusted; what {(unread == 1 ? "it" : "they")} might have said holds back every animal that it may concern.";
    }

    /// <summary>One doubt.</summary>
    public static SaidDoubt Of(Doubted doubt, Herd herd) => doubt switch
    {
        ExpectationFails fails => Fails(fails, herd),
        ExpectationStrained strained => Strained(strained, herd),
        Contradictions contradictions => Contradicted(contradictions, herd),
        ParityTooHigh high => ParityWords.Of(high, herd),
        TooFewEntries few => TooFew(few),
        ExpectationUnreadable unreadable => Unreadable(unreadable),
        FallenSilent silent => Silent(silent),
        BegunAfterTrouble begun => Begun(begun),
        NoneButOne none => None(none, herd),
        NothingToReach nothing => NoReach(nothing),
        EmptyBook book => Empty(book),
        MayBeOverlooked overlooked => Overlooked(overlooked),
        FilesNotRead files => Beside(files),
        RowsLeftOut rows => LeftOut(rows),
        NotReadByRules words => NotRead(words),
        RowsInDoubt rows => RowDoubtWords.Of(rows, herd),
        NotListed numbers => NotListedWords.Of(numbers, herd),
        TwoNumbers two => DoubleWords.Of(two, herd),
        _ => throw new ArgumentOutOfRangeException(nameof(doubt), doubt, "a sort of doubt without words"),
    };

    /// <summary><c>The promises for mating and transfer do not count.</c></summary>
    public static string NotCounted(ImmutableArray<Kind> kinds) => kinds switch
    {
        [] => "No promise rests on it.",
        [var one] => $"The promise for {one.Name} does not count.",
        _ => $"The promises for {Phrases.And([.. kinds.Select(kind => kind.Name)])} do not count.",
    };

    private static SaidDoubt Fails(ExpectationFails doubt, Herd herd) =>
        new("expectation_fails", HowMany(doubt.Expectation, doubt.Counted, doubt.Failing, doubt.Waived),
            NotCounted(doubt.Fallen) + AndWaived(doubt.Expectation, doubt.Waived), MendFirst(doubt.Failing, herd) + WayOut(doubt.Expectation))
        {
            Expectation = doubt.Expectation.Name,
            Fallen = doubt.Fallen,
            Rows = RowsOf(doubt.Failing, herd),
        };

    private static SaidDoubt Strained(ExpectationStrained doubt, Herd herd) =>
        new("expectation_strained", HowMany(doubt.Expectation, doubt.Counted, doubt.Failing, doubt.Waived),
            doubt.Failing.IsEmpty ? "The promises stand."
                : $"The promises stand: up to {Numbers.Of(doubt.Expectation.OverPercent)}% may be so.{AndWaived(doubt.Expectation, doubt.Waived)}",
            doubt.Failing.IsEmpty ? "Nothing is to be done." : "Write down what is missing.")
        {
            Expectation = doubt.Expectation.Name,
            Rows = RowsOf(doubt.Failing, herd),
        };

    private static SaidDoubt Contradicted(Contradictions doubt, Herd herd)
    {
        var expectation = doubt.Expectation;
        var count = doubt.Entries.Length;
        return new SaidDoubt("contradiction",
            $"{ManyWords.Count(count, expectation.Every)} {(count == 1 ? "has" : "have")} {Missing(expectation)}",
            $"{Phrases.Sentence(Phrases.And([.. expectation.Else.Select(kind => kind.Name)]))} {(expectation.Else.Length == 1 ? "is" : "are")} not known of "
                + $"{(doubt.Entries.Select(entry => entry.Animal).Distinct().Count() == 1 ? "her" : "any of them")} from that day to the next such entry.",
            $"Write down {(expectation.IsBefore ? "what came of it" : "what came before it")}, or put the entry right; if nobody knows, test her again.")
        {
            Expectation = expectation.Name,
            Rows = RowsOf(doubt.Entries, herd),
        };
    }

    private static SaidDoubt TooFew(TooFewEntries doubt)
    {
        var expectation = doubt.Expectation;
        var kind = expectation.Kind.Name;
        var years = Math.Round(doubt.CowYears, MidpointRounding.AwayFromZero);
        var found = doubt.Found == 0 ? $"No {kind} is on record" : $"{Phrases.Sentence(kind)} is on record only {Numbers.Times(doubt.Found)}";
        return new SaidDoubt("too_few_entries",
            $"{found} in {Numbers.Of(years)} cow-{(years == 1 ? "year" : "years")}, where at least {Numbers.Of(expectation.Count)} a year for every {Numbers.Of(expectation.Cows)} cows is expected",
            NotCounted(doubt.Fallen), "Write down what was seen; or promise from a day on which it is true.")
        {
            Expectation = expectation.Name,
            Fallen = doubt.Fallen,
        };
    }

    private static SaidDoubt Unreadable(ExpectationUnreadable doubt) =>
        new("expectation_unreadable", doubt.Expectation.IsAdded
            ? $"A change of what is expected of records under “{doubt.Expectation.Name}” cannot count as it is written"
            : $"What is expected of records under “{doubt.Expectation.Name}” cannot be read",
            NotCounted(doubt.Fallen), $"Mend it: {FileWords.Short(doubt.Expectation.Span.File.Path)} line {doubt.Expectation.Span.Line}.")
        {
            Expectation = doubt.Expectation.Name,
            Fallen = doubt.Fallen,
        };

    private static SaidDoubt Silent(FallenSilent doubt) =>
        new("fallen_silent", doubt.Strays == 0
            ? $"No {doubt.Kind.Name} is on record from {Dates.Range(Day.Date(doubt.From), Day.Date(doubt.To))}, and in other years there were some on these days"
            : $"{Phrases.Sentence(doubt.Kind.Name)} is on record on {Numbers.Count(doubt.Strays, "day", "days")} only from {Dates.Range(Day.Date(doubt.From), Day.Date(doubt.To))}, and in each of the other years on at least ten times as many of these days",
            $"The promise for {doubt.Kind.Name} reaches {Dates.Long(Day.Date(doubt.From - 1))} and no further: what happened since is not known.",
            "Bring the book up to date; or promise anew from a day on which it is true.")
        { Limited = [doubt.Kind] };

    private static SaidDoubt Begun(BegunAfterTrouble doubt) =>
        new("begun_after_trouble",
            $"Before the promise begins, {doubt.Failing} of {ManyWords.Count(doubt.Counted, doubt.Expectation.Every)} {(doubt.Failing == 1 ? "has" : "have")} {Missing(doubt.Expectation)}",
            NotCounted(doubt.Fallen), "Say below the promise what has changed since (because), and who agreed to it (agreed by).")
        {
            Expectation = doubt.Expectation.Name,
            Fallen = doubt.Fallen,
        };

    private static SaidDoubt None(NoneButOne doubt, Herd herd)
    {
        var kind = doubt.Kind.Name;
        return new SaidDoubt("none_but_one",
            doubt.IsUnreadable ? $"The farm says that there is no {kind}, and a row that cannot be read may be one"
            : doubt.Line == 0 ? $"The farm says that there is no {kind}, and a grown male is in the herd" : $"The farm says that there is no {kind}, and one is on record",
            NotCounted([doubt.Kind]), "Put the record right, or take that promise out.")
        {
            Fallen = [doubt.Kind],
            Rows = [DoubtRow.Of(doubt.Animal, doubt.Day, doubt.Line, herd)],
        };
    }

    private static SaidDoubt NoReach(NothingToReach doubt) =>
        new("nothing_to_reach", $"Nobody says up to which day {doubt.Kind.Name} is written down, and none is on record",
            $"The promise for {doubt.Kind.Name} covers no day.", "Write “up to” and that day below “records”.")
        { Fallen = [doubt.Kind] };

    private static SaidDoubt Empty(EmptyBook doubt) =>
        new("empty_book", "No row of the events’ file can be read: a book without a row bears out no promise",
            NotCounted(doubt.Fallen), "Export it again; or begin to write down what happens, and promise from that day on.")
        { Fallen = doubt.Fallen };

    private static SaidDoubt Overlooked(MayBeOverlooked doubt)
    {
        var (word, kind, exact) = (doubt.Hint.Word, doubt.Fallen.Name, NameText.Exact(doubt.Hint.Word));
        var (what, wayOut) = doubt.In switch
        {
            OverlookedIn.RuleFile => ($"“{word}” may be {kind}, and is read as something else or left out",
                $"If it is one, write “call {kind} also {exact}” in place of what the rule files say of it; if it is none, give it a name that nobody can take for {kind}."),
            OverlookedIn.Bullet => ($"“{word}” may be {kind}, and is read as something else or left out",
                $"Let the line about it say “- {NameText.Text(word)} is {NameText.Exact(kind)}”; or, if it is none, write “leave out {exact}, which is not {kind}” below “records”."),
            OverlookedIn.Heading => ($"The column “{word}” may tell of {kind}, and nobody reads it so",
                $"Say what stands there, below its “from”; what is not in the records yet is written down there. If it tells of no {kind}, write “leave out {exact}, which is not {kind}”."),
            OverlookedIn.Cell => ($"“{word}” may be an answer or a day of {kind}, and is read as blank or left out",
                $"Say what it means; or, if it says nothing of it, “leave out {exact}, which is not {kind}”."),
            OverlookedIn.Fact => ($"The fact “{word}” may tell of {kind}, and on no day: no rule of safety asks it",
                $"Write down what it says as {kind}, with its day, and take the fact out of the rule files; or, if it tells of no {kind}, “leave out {exact}, which is not {kind}”."),
            _ => ($"“{word}” may be {kind}, and is read as something else or left out",
                $"Write “call {kind} also {exact}”; or, if it is none, “leave out {exact}, which is not {kind}”."),
        };
        return new SaidDoubt("may_be_overlooked", what, NotCounted([doubt.Fallen]), wayOut) { Fallen = [doubt.Fallen] };
    }

    private static SaidDoubt Beside(FilesNotRead doubt) =>
        new("files_not_read", $"Beside the records {(doubt.Files.Length == 1 ? "lies" : "lie")} {Phrases.And([.. doubt.Files])}, and nobody reads {(doubt.Files.Length == 1 ? "it, though it has" : "them, though they have")} rows that the records do not have, with the same columns or of services and calves",
            NotCounted(doubt.Fallen), $"Put these rows into the records, or name {(doubt.Files[0].Contains(SheetOf, StringComparison.Ordinal) ? "the sheet" : "the file")} in a line such as “from \"{doubt.Files[0][(doubt.Files[0].LastIndexOf('/') + 1)..].Replace(SheetOf, ".xlsx\", sheet \"", StringComparison.Ordinal)}\"”; what is no part of them belongs in another folder.")
        { Fallen = doubt.Fallen };

    private static SaidDoubt NotRead(NotReadByRules doubt)
    {
        string[] names = [.. doubt.Kinds.Select(one => $"“{one.Kind.Name}”"), .. doubt.LeftOut.Select(left => $"“{left.Word}” (left out)")];
        var rows = doubt.Kinds.Sum(one => one.Entries) + doubt.LeftOut.Sum(left => left.Rows);
        return new("not_read_by_rules", $"No rule reads {Phrases.And(names)}, which {(names.Length == 1 ? "stands" : "together stand")} on record {Numbers.Times(rows)}",
            "Nothing comes of it: every answer is as if these rows were not there.",
            $"If one of them may be a service, a calving or another word of the rules, write “call … also …”{(doubt.LeftOut.IsEmpty ? "" : " in place of “leave out”")}; if a rule is to look at it, write that rule.")
        { RowCount = rows };
    }

    private static SaidDoubt LeftOut(RowsLeftOut doubt) =>
        new("rows_left_out", $"{Numbers.Count(doubt.Count, "row", "rows")} of {FileWords.Short(doubt.File)} {(doubt.Count == 1 ? "is" : "are")} left out, for “{doubt.Heading}” is {(doubt.Cell.Length == 0 ? "blank" : $"“{doubt.Cell}”")} there",
            $"That {(doubt.Count == 1 ? "it says" : "they say")} nothing that happened is the farm’s word.",
            "If it is not so, take “leave out rows” out.")
        { RowCount = doubt.Count };

    /// <summary>Entries that were read, and rows that were not, are counted apart.</summary>
    private static string HowMany(EntryExpectation expectation, int counted, ImmutableArray<Unexpected> failing, int waived)
    {
        var rows = failing.Count(entry => entry.IsUnreadable);
        var (read, subject) = (failing.Length - rows, expectation.Every);
        string[] parts =
        [
            read > 0 ? $"{read} of {ManyWords.Count(counted - rows, subject)} {(read == 1 ? "has" : "have")} {Missing(expectation)}" : "",
            rows == 1 ? $"1 row that cannot be read may be {ManyWords.One(subject)} with {Missing(expectation)}"
                : rows > 1 ? $"{rows} rows that cannot be read may be {ManyWords.Of(subject)} with {Missing(expectation)}" : "",
            failing.IsEmpty ? Waived(expectation, waived) : "",
        ];
        return Phrases.Sentence(string.Join("; ", parts.Where(part => part.Length > 0)));
    }

    /// <summary><c>1 calving is left out of the count by the farm’s word</c>; empty for none.</summary>
    private static string Waived(EntryExpectation expectation, int waived) =>
        waived == 0 ? "" : $"{ManyWords.Count(waived, expectation.Every)} {(waived == 1 ? "is" : "are")} left out of the count by the farm’s word";

    private static string AndWaived(EntryExpectation expectation, int waived) => waived == 0 ? "" : $" {Waived(expectation, waived)}.";

    /// <summary><c>no mating, transfer or running with bull 200 to 320 days before</c>.</summary>
    private static string Missing(EntryExpectation expectation)
    {
        var others = Phrases.Or([.. expectation.Others.Select(other => other.Subject), .. expectation.Spells.Select(spell => spell.Name)]);
        var (from, to) = (expectation.From, expectation.To);
        if (to.Count == 0)
        {
            return $"no {others} on that day";
        }

        var days = from.Count == 0 ? $"in the {to}" : from.Unit == to.Unit ? $"{from.Count} to {to}" : $"{from} to {to}";
        return $"no {others} {days} {(expectation.IsBefore ? "after" : "before")}{(expectation.IsOfOnePregnancy ? " and since the last calving, abortion or empty test" : "")}";
    }

    /// <summary>One word that nobody knows may be all that is wrong: it is told before anybody looks for a service that is there.</summary>
    private static string MendFirst(ImmutableArray<Unexpected> failing, Herd herd)
    {
        string[] rows = [.. failing.Where(entry => entry.ButFor != 0).Select(entry => herd.EventPlace(entry.ButFor)).Distinct().Select(place => $"{FileWords.Short(place.File)} line {place.Line}")];
        return rows.Length == 0 ? "" : $"First mend {Phrases.And([.. rows.Take(RowsNamed), .. rows.Length > RowsNamed ? [$"{rows.Length - RowsNamed} more"] : Array.Empty<string>()])}: what cannot be read there may have ended the pregnancy before, and a service before it is no father then. ";
    }

    private static string WayOut(EntryExpectation expectation) => expectation.Spells.IsEmpty
        ? "Write down what is missing; or promise from a day on which it is true."
        : "Write down when bulls ran; or promise from a day on which it is true, and scan 35 days after.";

    private static ImmutableArray<DoubtRow> RowsOf(ImmutableArray<Unexpected> entries, Herd herd) => [.. entries.Select(entry => DoubtRow.Of(entry, herd))];
}
