namespace Byrelaw.Reporting.Tests.Words;

/// <summary>Every sort of finding, with its margin, as people read it.</summary>
public sealed class FoundWordsTests
{
    private static readonly SourceSpan Span = new(new SourceFile("rules.byre", "needs"), 0, 5);
    private static readonly InventedWords Words = new(text => text);
    private static readonly ListReport List = new(InventedDraft.Make(), InventedDraft.Make().Lists[0]);
    private static readonly LocalDate Day = new(2026, 9, 28);

    [Fact]
    public void Every_finding_has_its_words()
    {
        var text = new StringBuilder();
        void Say(string about, Condition condition, Found found, double? margin = null)
        {
            var finding = new Finding { Condition = condition, Truth = Truth.False, Found = found, Margin = margin };
            text.Append(about).Append(": ").Append(FoundWords.Of(finding, List)).Append(" | ").Append(MarginWords.Of(finding)).Append('\n');
        }

        var none = new CountCondition(new CountTest(Comparison.Exactly, 0, 0), [new Counted(Words.Metritis)], []) { Span = Span };
        Say("none", none, new FoundCount(0, 0), 0);
        Say("one too many", none with { Test = new CountTest(Comparison.AtMost, 0, 0) }, new FoundCount(1, 1), -1);
        Say("at least one", none, new FoundCount(1, null));
        Say("not known how many", none, new FoundCount(0, null));
        Say("one to three", none, new FoundCount(1, 3));
        Say("up to two", none, new FoundCount(0, 2));
        Say("parity", new ParityCondition(new CountTest(Comparison.AtMost, 6, 6)) { Span = Span }, new FoundCount(7, 7), -1);

        var days = new TimeTest(Comparison.AtLeast, new TimeLength(56, TimeUnit.Days), new TimeLength(56, TimeUnit.Days));
        var since = new TimeSinceCondition(days, [Words.Calving]) { Span = Span };
        Say("short of days", since, new FoundSince(Day, new TimeLength(43, TimeUnit.Days)), -13);
        Say("at the limit", since, new FoundSince(Day, new TimeLength(56, TimeUnit.Days)), 0);
        Say("days to spare", since, new FoundSince(Day, new TimeLength(57, TimeUnit.Days)), 1);
        Say("too many days", since with { Test = days with { Comparison = Comparison.AtMost } }, new FoundSince(Day, new TimeLength(60, TimeUnit.Days)), -4);
        Say("never", since, new FoundNever());
        var months = new TimeTest(Comparison.AtLeast, new TimeLength(13, TimeUnit.Months), new TimeLength(13, TimeUnit.Months));
        Say("age", new AgeCondition(months) { Span = Span }, new FoundAge(new TimeLength(12, TimeUnit.Months), new TimeLength(12, TimeUnit.Months)), -1);
        Say("age not exact", new AgeCondition(months) { Span = Span }, new FoundAge(new TimeLength(12, TimeUnit.Months), new TimeLength(14, TimeUnit.Months)));

        var score = new MeasuredCondition(Aggregate.Latest, Words.BodyCondition, [], new NumberTest(Comparison.Between, new Limit(4), new Limit(5.5))) { Span = Span };
        Say("score", score, new FoundNumber(3.5, 3.5, null, Day, 1), -0.5);
        Say("not exact", score, new FoundNumber(3.5, 4.5, null, Day, 2));
        Say("not known", score, new FoundNumber(double.NegativeInfinity, double.PositiveInfinity, null, Day, 1));
        Say("change", score with { Aggregate = Aggregate.Change, Test = new NumberTest(Comparison.AtLeast, new Limit(-1), new Limit(-1)) }, new FoundNumber(-1.1, -1.1, null, null, 3), -0.1);

        var copper = new MobMeasuredCondition(Aggregate.Average, Words.LiverCopper, [], 5, new NumberTest(Comparison.AtLeast, new Limit(95), new Limit(95))) { Span = Span };
        Say("mob", copper, new FoundNumber(94.9996, 94.9996, "umol/kg", null, 7), -0.0004);
        Say("mob, too few", copper, new FoundNumber(96, 96, "umol/kg", null, 2));
        Say("mob, nobody", copper, new FoundNothing());
        Say("above a number", copper, new FoundNumber(10, double.PositiveInfinity, "umol/kg", null, 5));
        Say("of the mob", new MobCountCondition(new CountTest(Comparison.AtMost, 1, 1), Words.LiverCopper, [], copper.Test, 10) { Span = Span }, new FoundCount(2, 2), -1);

        var test = new TestCondition(Words.UterineCheck, [], [0], false) { Span = Span };
        Say("test", test, new FoundAnswers(["discharge"], Day));
        Say("two answers in a day", test, new FoundAnswers(["clean", null], Day));
        Say("nothing", test, new FoundNothing());
        var bull = new SpellCondition(new Language.Rulebooks.Words.Spell("running with bull", Words.Heat, Words.Mating, Span), true, []) { Span = Span };
        Say("in a spell", bull, new FoundSpell(Day));
        Say("in no spell", bull, new FoundSpell(null));
        var top = new StandingCondition(Words.Identity, true, 20, HerdGroup.Herd) { Span = Span };
        Say("standing", top, new FoundStanding(12, 4, 118, 210.5));
        Say("fact", new RecordedCondition(Words.Identity, false) { Span = Span }, new FoundText("Friesian"));
        Snapshot.Verify(text.ToString());
    }

    [Fact]
    public void Every_reason_for_not_knowing_has_its_words_and_its_task()
    {
        var text = new StringBuilder();
        foreach (var reason in Enum.GetValues<MissingReason>())
        {
            var missing = new Missing(reason, reason is MissingReason.FactMissing or MissingReason.FactUnreadable ? "born" : "ovary check", null, null, SettledBy.Yards, Line: 214, Needed: 3)
            {
                Filter = reason == MissingReason.DetailNotKnown ? "with method hand" : "",
            };
            text.Append($"{reason}: {MissingWords.Brief(missing, List)} | {MissingWords.Of(missing, List)} | {MissingWords.Task(missing, List)}\n");
        }

        var result = new Missing(MissingReason.NoResult, "pregnancy test", Day, null, SettledBy.Yards);
        text.Append($"from a day: {MissingWords.Of(result, List)}\n");
        text.Append($"up to a day: {MissingWords.Of(result with { From = null, To = Day }, List)}\n");
        text.Append($"on a day: {MissingWords.Of(result with { To = Day }, List)}\n");
        text.Append($"between days: {MissingWords.Of(result with { To = Day.PlusDays(5) }, List)}\n");
        Snapshot.Verify(text.ToString());
    }
}
