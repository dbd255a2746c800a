using Byrelaw.Language.Rulebooks.Conditions;
using NodaTime;

namespace Byrelaw.Benchmarks;

/// <summary>Twelve criteria such as a recipients' list has, once as rules and once as the plain loop that a programmer
/// would write for them by hand over the same sorted arrays. The loop is the practical limit.</summary>
internal static class TwelveCriteria
{
    private static readonly SourceSpan Span = new(new SourceFile("made-up.byre", "-"), 0, 1);

    public static readonly Choice Choice = new(
        "recipients", ChoiceFrom.Females, [], null, MadeUpHerd.Known, MadeUpHerd.Known, Span);

    public static Rulebook Rulebook { get; } = new()
    {
        Vocabulary = MadeUpHerd.Words,
        Programme = new Programme("Made up", [], [Choice], Span),
        Rules =
        [
            Rule(new AgeCondition(new TimeTest(Comparison.AtLeast, Days(400), Days(400))) { Span = Span }),
            Rule(new TimeSinceCondition(new TimeTest(Comparison.AtLeast, Days(56), Days(56)), [Kind("calving")]) { Span = Span }),
            Rule(Count(Comparison.AtLeast, 1, "heat", new SinceLast([Kind("calving")]) { Span = Span })),
            Rule(Count(Comparison.Exactly, 0, "mastitis", Last(30))),
            Rule(Count(Comparison.Exactly, 0, "metritis", Last(60))),
            Rule(Count(Comparison.Exactly, 0, "lameness", Last(30))),
            Rule(Count(Comparison.AtMost, 2, "transfer", new SinceLast([Kind("calving")]) { Span = Span })),
            Rule(Count(Comparison.AtLeast, 1, "vaccination", new BetweenAgo(Days(28), Days(365)) { Span = Span })),
            Rule(new MeasuredCondition(Aggregate.Latest, (MeasureKind)Kind("body condition"), [Last(45)],
                new NumberTest(Comparison.Between, new Limit(4), new Limit(5.5))) { Span = Span }),
            Rule(new TestCondition((TestKind)Kind("BVD virus"), [new Ever { Span = Span }], [1], false) { Span = Span }),
            Rule(new TestCondition((TestKind)Kind("uterine check"),
                [new FromAfterLast(Days(21), [Kind("calving")]) { Span = Span }], [1], false) { Span = Span }),
            Rule(Count(Comparison.Exactly, 0, "mating", new SinceLast([Kind("calving")]) { Span = Span })),
        ],
    };

    /// <summary>The same twelve for every animal on one day, written by hand: no coverage, no doubt, no reasons.</summary>
    /// <returns>For each animal one bit for each criterion that holds.</returns>
    public static short[] ByHand(Herd herd, LocalDate date)
    {
        var d = Day.Number(date);
        KindRun calving = Run(herd, "calving"), heat = Run(herd, "heat"), mating = Run(herd, "mating"), transfer = Run(herd, "transfer");
        KindRun mastitis = Run(herd, "mastitis"), metritis = Run(herd, "metritis"), lameness = Run(herd, "lameness");
        KindRun vaccination = Run(herd, "vaccination"), condition = Run(herd, "body condition");
        KindRun virus = Run(herd, "BVD virus"), uterus = Run(herd, "uterine check");
        var holds = new short[herd.Count];
        for (var a = 0; a < herd.Count; a++)
        {
            var calved = LastUpTo(calving, a, d);
            var since = calved < 0 ? herd.BornEarliest[a] : calving.Days[calved];
            var score = LastUpTo(condition, a, d);
            var tested = LastUpTo(virus, a, d);
            var looked = LastUpTo(uterus, a, d);
            var bits = 0;
            bits |= d - herd.BornEarliest[a] >= 400 ? 1 : 0;
            bits |= calved < 0 || d - since >= 56 ? 2 : 0;
            bits |= Between(heat, a, since, d) >= 1 ? 4 : 0;
            bits |= Between(mastitis, a, d - 30, d) == 0 ? 8 : 0;
            bits |= Between(metritis, a, d - 60, d) == 0 ? 16 : 0;
            bits |= Between(lameness, a, d - 30, d) == 0 ? 32 : 0;
            bits |= Between(transfer, a, since, d) <= 2 ? 64 : 0;
            bits |= Between(vaccination, a, d - 365, d - 28) >= 1 ? 128 : 0;
            bits |= score >= 0 && condition.Days[score] >= d - 45 && condition.Low[score] is >= 4 and <= 5.5 ? 256 : 0;
            bits |= tested >= 0 && virus.Answers[tested] == 1 ? 512 : 0;
            bits |= looked >= 0 && uterus.Days[looked] >= since + 21 && uterus.Answers[looked] == 1 ? 1024 : 0;
            bits |= Between(mating, a, since, d) == 0 ? 2048 : 0;
            holds[a] = (short)bits;
        }

        return holds;
    }

    private static int LastUpTo(KindRun run, int animal, int day)
    {
        var i = run.Starts[animal + 1] - 1;
        while (i >= run.Starts[animal] && run.Days[i] > day)
        {
            i--;
        }

        return i >= run.Starts[animal] ? i : -1;
    }

    private static int Between(KindRun run, int animal, int from, int to)
    {
        var count = 0;
        for (var i = run.Starts[animal]; i < run.Starts[animal + 1]; i++)
        {
            count += run.Days[i] >= from && run.Days[i] <= to ? 1 : 0;
        }

        return count;
    }

    private static int _rules;

    private static Rule Rule(Condition needs) => new() { Name = $"rule {++_rules}", List = "recipients", Needs = needs, Span = Span };

    private static CountCondition Count(Comparison comparison, int number, string kind, Window window) =>
        new(new CountTest(comparison, number, number), [new Counted(Kind(kind))], [window]) { Span = Span };

    private static InTheLast Last(int days) => new(Days(days)) { Span = Span };

    private static TimeLength Days(int count) => new(count, TimeUnit.Days);

    private static Kind Kind(string name) => MadeUpHerd.Words.FindKind(name)!;

    private static KindRun Run(Herd herd, string kind) => herd.Runs[Kind(kind).Id];
}
