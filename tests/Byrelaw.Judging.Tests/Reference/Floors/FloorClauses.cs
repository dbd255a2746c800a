namespace Byrelaw.Judging.Tests.Reference;

/// <summary>The few things that the floor asks of the records, each made once and asked for many days.</summary>
/// <param name="knowledge">The records, read literally.</param>
/// <param name="words">What the floor speaks of.</param>
public sealed class FloorClauses(Knowledge knowledge, FloorNouns words)
{
    private static readonly CountTest None = new(Comparison.Exactly, 0, 0);

    public static Window SinceLast(params Kind[] kinds) => new SinceLast([.. kinds]) { Span = Words.Nowhere };

    public static Window FromAfterLast(int days, Kind kind) => new FromAfterLast(Days(days), [kind]) { Span = Words.Nowhere };

    public static Window InTheLastDays(int days) => new InTheLast(Days(days)) { Span = Words.Nowhere };

    public Window AfterTheBull(int days) => new FromAfterSpell(Days(days), words.WithBull) { Span = Words.Nowhere };

    public Clause No(Window window, params EventKind[] kinds) =>
        Ask(new CountCondition(None, [.. kinds.Select(kind => new Counted(kind))], [window]) { Span = Words.Nowhere });

    public Clause NoPregnant(Window window) => Ask(new CountCondition(None, [new Counted(words.Test, Answer("pregnant"))], [window]) { Span = Words.Nowhere });

    /// <summary>No such answer of a test of the farm's own.</summary>
    public Clause NoAnswer(Window window, TestKind test, IReadOnlyList<int> answers) =>
        Ask(new CountCondition(None, [.. answers.Select(answer => new Counted(test, answer))], [window]) { Span = Words.Nowhere });

    /// <summary>The latest such test in the window found no calf.</summary>
    public Clause Empty(TestKind test, Window window) => Ask(new TestCondition(test, [window], [Answer("empty")], false) { Span = Words.Nowhere });

    public Clause NotWithBull(Window window) => Ask(new SpellCondition(words.WithBull, true, [window]) { Span = Words.Nowhere });

    public Clause LessThanDaysSince(int days, EventKind kind) =>
        Ask(new TimeSinceCondition(new TimeTest(Comparison.LessThan, Days(days), Days(days)), [kind]) { Span = Words.Nowhere });

    public Clause AtLeastDaysSince(int days, EventKind kind) =>
        Ask(new TimeSinceCondition(new TimeTest(Comparison.AtLeast, Days(days), Days(days)), [kind]) { Span = Words.Nowhere });

    public Clause IsBought() => Ask(new FactTextCondition(words.Origin, ["bought"], false) { Span = Words.Nowhere });

    public Clause BoughtInTheLastYears(int years) => Ask(new CountCondition(
        new CountTest(Comparison.AtLeast, 1, 1), [new Counted(words.Purchase)], [new InTheLast(new TimeLength(years, TimeUnit.Years)) { Span = Words.Nowhere }])
    { Span = Words.Nowhere });

    private Clause Ask(Condition condition) => at => ConditionReference.At(condition, knowledge, at);

    private int Answer(string answer) => words.Test.Answers.IndexOf(answer);

    private static TimeLength Days(int count) => new(count, TimeUnit.Days);
}
