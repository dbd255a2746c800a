using Byrelaw.Judging.Criteria;
using Byrelaw.Judging.Days;
using Byrelaw.Language.Rulebooks;

namespace Byrelaw.Judging.Tests.Bounds;

/// <summary>No rule hangs the judge: its work is held to a bound, in steps, which no machine's speed moves.</summary>
public sealed class StepsTests
{
    /// <summary>Of all forms a day costs no more than so many looks at each entry of hers, of her mob's and each row that could not be read, squared.</summary>
    private const double MostOfADay = 3;

    [Fact]
    public void Any_form_takes_no_more_steps_than_days_and_records_account_for() => Each.Hold(
        Gen.Frequency((1, JudgingCase.Any), (2, JudgingCase.Doubtful)), Cases.Count / 2, TooMany, one => one.ToString());

    [Fact]
    public void Days_of_which_nothing_is_recorded_cost_nothing() => Each.Hold(
        JudgingCase.Doubtful.Select(GenLengthened, (one, years) => (one, years)), Cases.Count / 4,
        pair =>
        {
            // The same records, with many years more after them of which nothing is kept.
            var (near, far) = (PerDay(pair.one), PerDay(Older(pair.one, pair.years)));
            // Where the day of an anchor is not known, a window counted in months is looked at once for each month: 12 a year, and never for each day.
            return far > (2 * near) + 200 + (12 * pair.years) ? $"{near} steps a day, and {far} with {pair.years} years between" : null;
        },
        pair => pair.one.ToString());

    [Theory]
    [InlineData("average", "exactly 300 kg")]
    [InlineData("lowest", "between 290 and 310 kg")]
    [InlineData("highest", "between 290 and 310 kg")]
    [InlineData("change in", "exactly 0 kg")]
    public void Twice_as_many_results_since_an_event_that_may_have_been_on_any_day_take_twice_the_work(string aggregate, string demand)
    {
        var (steps, twice) = (Weighed(aggregate, demand, 400), Weighed(aggregate, demand, 800));
        ((double)twice / steps).ShouldBeLessThan(2.5, $"{steps} steps for 400 results, {twice} for 800");
    }

    [Theory]
    [InlineData("exactly 400 heat since last mating", "heat,,")]
    [InlineData("between 100 and 200 heat since last mating", "heat,,")]
    [InlineData("exactly 400 clean check since last mating", "check,clean,")]
    [InlineData("exactly 400 heat or clean check since last mating", "heat,,")]
    public void So_do_exact_counts(string demand, string row)
    {
        var (steps, twice) = (Judged(demand, row, 400), Judged(demand, row, 800));
        ((double)twice / steps).ShouldBeLessThan(2.5, $"{steps} steps for 400 entries, {twice} for 800");
    }

    /// <summary>The steps that one day takes, of an animal weighed on each of so many days, whose matings nobody keeps.</summary>
    private static long Weighed(string aggregate, string demand, int results) => Judged($"{aggregate} weight since last mating {demand}", "weight,300,kg", results);

    /// <summary>The same of any demand and row.</summary>
    private static long Judged(string demand, string row, int entries)
    {
        var rulebook = RulebookReader.Read("rules.byre", new OneFile($"""
            event mating
            event heat
            measure weight  in kg
            test check answers clean, dirty

            rules for recipients

            rule "R"
              needs {demand}
              because "so"

            records "r"
              up to 2026-09-30

            programme "P"
              transfer on 2026-09-30
              choose recipients from females, judged on first transfer, for looking only
            """))!.Rulebook;
        var from = new LocalDate(2026, 9, 30).PlusDays(-entries);
        var rows = string.Concat(Enumerable.Range(0, entries).Select(day => $"{LocalDatePattern.Iso.Format(from.PlusDays(day + 1))},1,{row}\n"));
        var herd = HerdReader.Read(
            "animal,born,sex\n1,2020-05-01,F\n"u8.ToArray(), Encoding.UTF8.GetBytes($"date,animal,kind,value,unit\n{LocalDatePattern.Iso.Format(from)},1,mating,,\n{rows}"), rulebook.Vocabulary, rulebook.Records);
        var days = new Judge(rulebook, herd).Days;
        days.Steps = new StepCounter();
        var until = int.MaxValue;
        new CriterionCompiler(days, rulebook).Compile(rulebook.Rules[0].Needs).On(0, Day.Number(new LocalDate(2026, 9, 30)), ref until, null);
        return days.Steps.Count;
    }

    private sealed class OneFile(string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => Encoding.UTF8.GetBytes(text);
    }

    private static Gen<int> GenLengthened => Gen.Int[5, 40];

    private static string? TooMany(JudgingCase one)
    {
        var (steps, allowed) = (Steps(one), MostOfADay * Days(one) * Leaves(one.Rulebook) * one.Farm.Animals.Length * Math.Pow(one.Farm.Events.Length + 8, 2));
        return steps > allowed ? $"{steps} steps, at most {allowed} allowed" : null;
    }

    /// <summary>The same animals and rows, so many years earlier.</summary>
    private static JudgingCase Older(JudgingCase one, int years) => one with
    {
        Farm = one.Farm with
        {
            Animals = [.. one.Farm.Animals.Select(animal => animal with { Born = Older(animal.Born, years) })],
            Events = [.. one.Farm.Events.Select(row => row with { Date = Older(row.Date, years) })],
        },
    };

    private static string Older(string date, int years) =>
        LocalDatePattern.Iso.Parse(date) is { Success: true, Value: var day } ? LocalDatePattern.Iso.Format(day.PlusYears(-years)) : date;

    private static double PerDay(JudgingCase one) => Steps(one) / Days(one);

    private static long Steps(JudgingCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn);
        var judge = new Judge(one.Rulebook, herd, one.KnownOn);
        judge.Days.Steps = new StepCounter();
        foreach (var choice in one.Rulebook.Programme!.Choices)
        {
            for (var animal = 0; animal < herd.Count; animal++)
            {
                judge.JudgeOne(choice, animal, one.On);
            }
        }

        return judge.Days.Steps.Count;
    }

    private static double Days(JudgingCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn);
        var judge = new Judge(one.Rulebook, herd, one.KnownOn);
        return one.Rulebook.Programme!.Choices.Max(choice =>
            judge.JudgeOne(choice, 0, one.On).Timeline is { } line ? Period.DaysBetween(line.First, line.Last) + 1 : 1);
    }

    private static int Leaves(Rulebook book) => 4 + book.Rules.Select(rule => rule.Needs).Concat(book.Prefers.Select(prefer => prefer.Condition))
        .Concat(book.Defines.Select(define => define.Condition)).Sum(condition => condition.Written().Count());
}
