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
            return far > (2 * near) + 200 ? $"{near} steps a day, and {far} with {pair.years} years between" : null;
        },
        pair => pair.one.ToString());

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
