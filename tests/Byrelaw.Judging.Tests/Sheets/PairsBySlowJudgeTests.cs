using Byrelaw.Judging.Promises;
using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Planning.Calendar;
using Byrelaw.Planning.Pairing;

namespace Byrelaw.Judging.Tests.Sheets;

/// <summary>Whoever may be given an embryo on the day is fit, or to be examined first, by the slow evaluator too; and less information lets nobody in.</summary>
public sealed class PairsBySlowJudgeTests : IRuleFiles
{
    private static readonly LocalDate Day = new(2026, 10, 20);

    private const string Text = """
        event calving  not before 15 months of age
        event abortion
        event mastitis
        event heat
        event mating
        event transfer  marks transfer
        event drying off
        event bull in
        event bull out
        event purchase  joins the herd
        spell running with bull  from bull in until bull out, or in a mob with a male from 6 months of age
        test pregnancy test  answers pregnant, empty  in the yards, with method is one of ultrasound, blood, milk, hand, blank is hand
        test ovary check  answers corpus luteum, follicle, quiet  in the yards
        fact origin  is one of home-bred, bought

        rules for recipients
        safety rule "Well"
          needs no mastitis in the last 7 days
          because "so"
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "so"
        rule "Corpus luteum felt"
          needs latest ovary check in the last 2 days is corpus luteum
          on the day
          because "so"
        rule "Heat at the right time"
          needs between 6 and 8 days since last heat
          on the day
          because "so"

        records "records"
          up to 2026-10-20
          complete for calving, abortion, mastitis, heat, mating, transfer, drying off, bull in, bull out, purchase, pregnancy test, mob since 2015-01-01

        programme "P"
          collection on 2026-10-12
          transfer 8 days after collection
          choose recipients from females, judged on first transfer
        """;

    private static readonly Gen<ImmutableArray<EventRow>> Events = Gen.Select(Gen.Int[1, 5], Gen.Int[0, 9], Gen.Int[0, 40], Gen.Int[0, 3]).Array[0, 8].Select(rows => (ImmutableArray<EventRow>)
    [
        .. Enumerable.Range(1, 5).Select(cow => new EventRow($"2026-0{5 + (cow % 3)}-15", $"{cow}", "calving") { Details = [""] }),
        .. Enumerable.Range(1, 5).Select(cow => new EventRow(LocalDatePattern.Iso.Format(Day.PlusDays(-5 - cow % 4)), $"{cow}", "heat") { Details = [""] }),
        .. rows.Select(row => Row(row.Item1, row.Item2, row.Item3, row.Item4)),
    ]);

    [Fact]
    public void Whoever_may_be_given_an_embryo_is_fit_or_examined_first_by_the_slow_evaluator_and_less_information_lets_nobody_in()
    {
        var (fit, first) = (0, 0);
        Gen.Select(Events, Gen.Int[0, 17]).Hold(
            one =>
            {
                var (rulebook, farm, day) = Paired(one.Item1);
                var that = new ReferenceJudge(rulebook, farm, null, Day);
                var list = ProgrammeLists.Recipients(rulebook.Programme!)!;
                foreach (var recipient in day.Waiting)
                {
                    var judged = that.Judge(list, recipient.Animal);
                    judged.Answer.Answer.ShouldBe(Answer.Ready, recipient.Number);
                    foreach (var rule in judged.Rules.Where(rule => rule.Days.On(DayNumber.Of(Day)).Truth != Truth.True))
                    {
                        // Only what a hand on her finds out may be open, and then she is examined first.
                        (rule.Name, rule.Days.On(DayNumber.Of(Day)).Truth, recipient.IsExaminedFirst).ShouldBe(("Corpus luteum felt", Truth.Unknown, true));
                    }

                    that.FloorOf(recipient.Animal, Day, Day).ShouldAllBe(rule => rule.Days.On(DayNumber.Of(Day)).Truth == Truth.True);
                    Interlocked.Increment(ref recipient.IsExaminedFirst ? ref first : ref fit);
                }

                // One row that nobody can read any more.
                var smudged = Paired([.. one.Item1.Select((row, i) => i == one.Item2 % one.Item1.Length ? row with { Date = "smudged" } : row)]).Day;
                smudged.Waiting.Select(recipient => recipient.Number).Except(day.Waiting.Select(recipient => recipient.Number)).ShouldBeEmpty("less information lets nobody in");
                smudged.Waiting.Where(recipient => !recipient.IsExaminedFirst).Select(recipient => recipient.Number).Except(day.Waiting.Where(recipient => !recipient.IsExaminedFirst).Select(recipient => recipient.Number)).ShouldBeEmpty("nor makes anybody fit");
            },
            count: 5, show: one => string.Join('\n', one.Item1.Select(row => $"{row.Date},{row.Animal},{row.Kind},{row.Value},{string.Join(',', row.Details)}")) + $"\nsmudged: {one.Item2 % one.Item1.Length}");
        (Drawn.Only is not null || (fit + first > 2)).ShouldBeTrue("else nothing was tried");
    }

    private (Rulebook Rulebook, PlainFarm Farm, DayOfTransfer Day) Paired(ImmutableArray<EventRow> events)
    {
        var farm = new PlainFarm(["origin"], [.. Enumerable.Range(1, 5).Select(cow => new AnimalRow($"{cow}", "2020-05-01", "F", "Home", "", ["home-bred"]))], events) { DetailNames = ["method"] };
        var reading = RulebookReader.Read("farm.byre", this)!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
        var rulebook = reading.Rulebook;
        var herd = Believed.Of(rulebook, HerdReader.Read(FarmCsv.Animals(farm), FarmCsv.Events(farm), rulebook.Vocabulary, rulebook.Records));
        return (rulebook, farm, Pairer.Pair(rulebook, herd, Pairer.SessionOn(rulebook.Programme!, Day)!, new PairingAsked(Day)));
    }

    private static EventRow Row(int cow, int what, int ago, int more)
    {
        var (kind, value, days) = what switch
        {
            0 => ("mating", "", ago),
            1 => ("pregnancy test", more == 0 ? "pregnant" : "empty", ago),
            2 => ("mastitis", "", ago % 12),
            3 => ("heat", "", ago % 12),
            4 => ("transfer", "", ago),
            _ => ("ovary check", more switch { 0 => "follicle", 1 => "pending", _ => "corpus luteum" }, ago % 4),
        };
        return new EventRow(LocalDatePattern.Iso.Format(Day.PlusDays(-days)), $"{cow}", kind, value) { Details = [kind == "pregnancy test" ? "ultrasound" : ""] };
    }

    string IRuleFiles.Resolve(string from, string relative) => relative;

    string IRuleFiles.Show(string path) => path;

    byte[]? IRuleFiles.Read(string path) => Encoding.UTF8.GetBytes(Text);
}
