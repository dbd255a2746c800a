using Byrelaw.Judging.Tuning;

namespace Byrelaw.Judging.Tests.Tuning;

/// <summary>Both sides of a limit, worked by hand: cows 1 and 2 on a list judged on 20 and 21 October 2026, everything on record up to 30 September.</summary>
public sealed class WorkedTuningTests : IRuleFiles
{
    private string _rules = "";

    [Fact]
    public void A_limit_that_is_met_exactly_lets_in_and_the_day_after_does_not()
    {
        // 1 calved 50 days before the first judging day, 2 calved 60 days before it: at least asks for the first day.
        Usable("at least 56 days since last calving", "2026-08-31,1,calving", "2026-08-21,2,calving").ShouldBe("0 to 50: 1 2; 51 to 60: 2; from 61: nobody");

        // More than 50 days on the first day asks for 51.
        Usable("more than 56 days since last calving", "2026-08-31,1,calving", "2026-08-21,2,calving").ShouldBe("0 to 49: 1 2; 50 to 59: 2; from 60: nobody");
    }

    [Fact]
    public void At_most_asks_for_the_last_of_the_judging_days() =>
        Usable("at most 56 days since last calving", "2026-08-31,1,calving", "2026-08-21,2,calving").ShouldBe("0 to 50: nobody; 51 to 60: 1; from 61: 1 2");

    [Fact]
    public void A_limit_is_tried_as_far_back_as_the_only_one_of_a_kind() =>
        Usable("at least 56 days since last calving", "2024-08-21,1,calving", "2024-08-21,2,calving").ShouldBe("0 to 790: 1 2; from 791: nobody");

    [Fact]
    public void A_window_holds_its_first_day()
    {
        // Mastitis on 20 September: 30 days before the first judging day, so the look back must be shorter than that to miss it.
        Usable("no mastitis in the last 30 days", "2026-09-20,1,mastitis").ShouldBe("0 to 29: 1 2; from 30: 2");
    }

    [Fact]
    public void Each_bound_of_a_between_is_tuned_with_the_other_where_it_is()
    {
        string[] rows = ["2026-09-25,1,body condition,3.5", "2026-09-25,2,body condition,5"];
        Usable("latest body condition in the last 45 days between 3 and 4.5", rows).ShouldBe("1 to 3.5: 1; 3.500001 to 4.5: nobody");
        Usable("latest body condition in the last 45 days between 3 and 4.5", 1, rows).ShouldBe("3 to 3.499999: nobody; 3.5 to 4.999999: 1; 5 to 10: 1 2");
    }

    [Fact]
    public void More_than_a_score_starts_above_it() =>
        Usable("latest body condition in the last 45 days more than 4", "2026-09-25,1,body condition,3.5", "2026-09-25,2,body condition,5")
            .ShouldBe("1 to 3.499999: 1 2; 3.5 to 4.999999: 2; 5 to 10: nobody");

    [Fact]
    public void A_share_of_her_own_weight_changes_at_her_own_share() =>
        Usable("latest weight in the last 45 days at least 60% of mature weight", "2026-09-25,1,weight,300,kg", "2026-09-25,2,weight,400,kg")
            .ShouldBe("0 to 60: 1 2; 60.000001 to 80: 2; from 80.000001: nobody");

    [Fact]
    public void A_share_of_one_is_a_share_and_a_share_of_nothing_is_none()
    {
        // 1 should weigh 1 kg and weighs half of it; of 2, who should weigh nothing, any weight is more than any share.
        _animals = "animal,born,sex,mature weight\n1,2020-05-01,F,1\n2,2020-05-01,F,0\n"u8.ToArray();
        Usable("latest weight in the last 45 days at least 60% of mature weight", "2026-09-25,1,weight,0.5,kg", "2026-09-25,2,weight,400,kg")
            .ShouldBe("0 to 50: 1 2; from 50.000001: 2");
    }

    [Fact]
    public void The_top_of_a_herd_of_two_changes_at_a_half()
    {
        // One place for 50% and less, two beyond it: 1 has the greater index.
        Usable("breeding index not in the top 20% of the herd").ShouldBe("0.000001 to 50: 2; 50.000001 to 100: nobody");
    }

    [Fact]
    public void A_count_is_never_below_one_where_a_rule_asks_for_some() =>
        Usable("at least 2 heats since birth", "2026-08-01,1,heat", "2026-09-01,1,heat", "2026-09-01,2,heat").ShouldBe("1: 1 2; 2: 1; from 3: nobody");

    [Fact]
    public void A_number_in_a_define_moves_every_rule_that_speaks_of_it()
    {
        var (rulebook, _) = Farm("define rested\n  no mastitis in the last 30 days\n\nrule \"A\"\n  needs rested\n  because \"so\"\n\nrule \"B\"\n  applies to rested\n  needs parity at most 3\n  because \"so\"\n\nrule \"C\"\n  needs parity at most 3\n  because \"so\"\n");
        var number = NumbersOfRule.Of(rulebook, rulebook.Rules[0]).ShouldHaveSingleItem();

        (number.Through.Single(), number.Number.Part, number.Number.Value).ShouldBe(("rested", NumberPart.FirstWindow, 30));
        MovedBy.Rules(rulebook, number).Select(rule => rule.Name).ShouldBe(["A", "B"]);
        NumbersOfRule.Of(rulebook, rulebook.Rules[1]).Select(one => (one.Number.Part, one.Define)).ShouldBe([(NumberPart.Limit, null), (NumberPart.FirstWindow, 0)]);
    }

    [Fact]
    public void Two_numbers_at_once_are_judged_cell_by_cell()
    {
        var (rulebook, rows) = Farm(
            "rule \"A\"\n  needs at least 56 days since last calving\n  because \"so\"\n\nrule \"B\"\n  needs no mastitis in the last 30 days\n  because \"so\"\n",
            "2026-08-31,1,calving", "2026-09-20,1,mastitis", "2026-08-21,2,calving");
        var herd = HerdReader.Read(_animals, rows, rulebook.Vocabulary, rulebook.Records);
        var pair = RuleTuner.Tune(rulebook, herd, rulebook.Rules[0], rulebook.Programme!.Choices[0], rulebook.Rules[1]).Pairs.ShouldHaveSingleItem();

        // Alone neither lets cow 1 in: she calved 50 days before and had mastitis 30 days before. Together they do.
        (string.Join(' ', pair.FirstValues), string.Join(' ', pair.SecondValues)).ShouldBe(("50 56 61", "29 30"));
        pair.Cells.Select(row => string.Join(' ', row.Select(cell => cell.Usable))).ShouldBe(["2 1", "1 1", "0 0"]);
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => Encoding.UTF8.GetBytes(_rules);

    private byte[] _animals = Encoding.UTF8.GetBytes(
        "animal,born,sex,breeding index,mature weight\n1,2020-05-01,F,120,500\n2,2020-05-01,F,100,500\n");

    private string Usable(string needs, params string[] rows) => Usable(needs, 0, rows);

    /// <summary>Which cows may be used at which values of a number of the condition.</summary>
    private string Usable(string needs, int which, params string[] rows)
    {
        var (rulebook, events) = Farm($"rule \"R\"\n  needs {needs}\n  because \"so\"\n", rows);
        var herd = HerdReader.Read(_animals, events, rulebook.Vocabulary, rulebook.Records);
        var tuning = new NumberTuner(rulebook, herd).Tune(NumbersOfRule.Of(rulebook, rulebook.Rules[0])[which], rulebook.Programme!.Choices[0]);
        var bands = new List<(ValueRange Range, string Who)>();
        foreach (var step in tuning.Steps)
        {
            var who = string.Join(' ', tuning.Animals.Where(animal => animal.At(step.Range.To ?? step.Range.From!.Value) is Answer.Ready or Answer.OnCourse).Select(animal => animal.Number));
            who = who.Length == 0 ? "nobody" : who;
            if (bands.Count > 0 && bands[^1].Who == who)
            {
                bands[^1] = (new ValueRange(bands[^1].Range.From, step.Range.To), who);
            }
            else
            {
                bands.Add((step.Range, who));
            }
        }

        return string.Join("; ", bands.Select(band => $"{Range(band.Range)}: {band.Who}"));
    }

    private static string Range(ValueRange range) =>
        range.To is not { } to ? $"from {Bare(range.From)}" : range.From == to ? Bare(to) : $"{Bare(range.From)} to {Bare(to)}";

    private static string Bare(decimal? value) => value?.ToString("0.######", CultureInfo.InvariantCulture) ?? "";

    private (Language.Rulebooks.Rulebook Rulebook, byte[] Events) Farm(string rules, params string[] rows)
    {
        _rules = $"""
            event calving   also calvings, not before 15 months of age
            event heat   also heats
            event mastitis
            measure body condition   on scale 1 to 10
            measure weight   in kg
            fact breeding index   is number
            fact mature weight   in kg

            rules for recipients

            {rules}
            records "records"
              up to 2026-09-30
              complete for calving, heat, mastitis since 2015-01-01

            programme "P"
              collection on 2026-10-12
              transfer 8 days after collection, over 2 days
              choose recipients from females, judged from first transfer to final transfer, for looking only
            """;
        var reading = RulebookReader.Read("farm.byre", this)!;
        reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
        return (reading.Rulebook, Encoding.UTF8.GetBytes($"date,animal,kind,value,unit\n{string.Concat(rows.Select(row => row + string.Concat(Enumerable.Repeat(",", 4 - row.Count(c => c == ','))) + "\n"))}"));
    }
}
