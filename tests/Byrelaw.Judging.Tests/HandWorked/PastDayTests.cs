namespace Byrelaw.Judging.Tests.HandWorked;

/// <summary>A list judged on a day before the one that the records reach: what has come to light since keeps her out all the same.</summary>
public sealed class PastDayTests
{
    private const string Calved = "2026-05-01,7,calving";

    [Fact]
    public void Nothing_since_leaves_her_Ready() => Farm.Answer(Calved, "2026-09-01,7,pregnancy test,empty").ShouldBe("Ready");

    [Fact]
    public void Scanned_in_calf_after_the_judging_day_is_not_Ready() =>
        Farm.Answer(Calved, "2026-09-15,7,pregnancy test,pregnant").ShouldStartWith("No");

    [Fact]
    public void Served_after_the_judging_day_is_not_Ready() => Farm.Answer(Calved, "2026-09-10,7,mating").ShouldStartWith("Later");

    [Fact]
    public void An_embryo_after_the_judging_day_is_not_Ready() => Farm.Answer(Calved, "2026-09-10,7,transfer").ShouldStartWith("Later");

    [Fact]
    public void A_bull_put_in_after_the_judging_day_is_not_Ready() =>
        Farm.Answer(Calved, "2026-09-03,herd,bull in", "2026-09-06,herd,bull out").ShouldNotBe("Ready");

    [Fact]
    public void What_nobody_kept_since_the_judging_day_is_asked() =>
        new Farm { Keeps = Farm.All + "\n  complete for mating since 2015-01-01 until 2026-09-01" }.Judged("2026-08-20", Calved).Answer.ShouldBe(Verdicts.Answer.Ask);

    [Fact]
    public void As_known_on_the_judging_day_she_is_Ready_still() =>
        new Farm { KnownOn = new(2026, 8, 20) }.Judged("2026-08-20", Calved, "2026-09-10,7,mating").Answer.ShouldBe(Verdicts.Answer.Ready);

    [Fact]
    public void Later_is_from_a_day_on_which_it_all_holds()
    {
        // Served on 1 August and felt empty, she would be clear on no day before the 29th: by the records' end, 20 September, she was served again on the 2nd.
        var later = new Farm().Judged("2026-08-20", Calved, "2026-08-01,7,mating", "2026-08-30,7,pregnancy test,empty,,ultrasound", "2026-09-02,7,mating", "2026-09-20,7,abortion");
        later.Answer.ShouldBe(Verdicts.Answer.Later);
        later.NotBefore.ShouldBe(new LocalDate(2026, 9, 30));
    }

    [Fact]
    public void Later_days_before_the_records_end_hold_only_if_all_holds_then_too()
    {
        // Without the second service a day in between would do.
        var later = new Farm().Judged("2026-08-20", Calved, "2026-08-01,7,mating", "2026-08-30,7,pregnancy test,empty,,ultrasound");
        (later.Answer, later.ReadyFrom).ShouldBe((Verdicts.Answer.Later, new LocalDate(2026, 8, 30)));
    }

    [Fact]
    public void What_came_to_light_is_told_of_the_day_that_the_records_reach()
    {
        var rule = new Farm().Judged("2026-08-20", Calved, "2026-09-15,7,pregnancy test,pregnant").Rules.Single(rule => rule.Name == "Floor: not in calf");
        rule.FoundOn.ShouldBe(new LocalDate(2026, 9, 20));
        rule.Findings.SelectMany(finding => finding.Evidence).ShouldContain(evidence => evidence.Date == new LocalDate(2026, 9, 15));
    }

    [Fact]
    public void A_list_for_looking_only_says_what_held_on_its_day_and_tells_the_danger()
    {
        var animal = new Farm { Use = ", for looking only" }.Judged("2026-08-20", Calved, "2026-09-15,7,pregnancy test,pregnant");
        (animal.Answer, animal.InCalf).ShouldBe((Verdicts.Answer.Ready, InCalf.TakeAsInCalf));
    }

    [Fact]
    public void Where_nothing_is_given_the_floor_tells_and_a_safety_rule_bars()
    {
        var told = new Farm { List = "donors", Use = ", nothing given" }.Judged("2026-08-20", Calved, "2026-09-15,7,pregnancy test,pregnant");
        (told.Answer, told.InCalf).ShouldBe((Verdicts.Answer.Ready, InCalf.TakeAsInCalf));
        var barred = new Farm { List = "donors", Use = ", nothing given", Rule = "safety rule \"Well\"\n  needs no fever in the last 7 days" }
            .Judged("2026-08-20", Calved, "2026-09-16,7,fever");
        barred.Answer.ShouldBe(Verdicts.Answer.Later);
        barred.ReadyFrom.ShouldBe(new LocalDate(2026, 9, 24));
    }

    [Fact]
    public void A_rule_that_is_not_for_safety_is_judged_on_its_own_day() =>
        new Farm { Rule = "rule \"Well\"\n  needs no fever in the last 7 days" }.Judged("2026-08-20", Calved, "2026-09-16,7,fever").Answer.ShouldBe(Verdicts.Answer.Ready);

    /// <summary>One cow, 7, the base vocabulary, and a list judged a month before the day that the records reach.</summary>
    private sealed class Farm : IRuleFiles
    {
        public const string All = "complete for calving, abortion, transfer, drying off, purchase, bull in, bull out, mob, pregnancy test, fever since 2015-01-01";

        private string _file = "";

        public string Keeps { get; init; } = All + "\n  complete for mating since 2015-01-01";

        public string List { get; init; } = "recipients";

        public string Use { get; init; } = "";

        public string Rule { get; init; } = "rule \"Eight weeks calved\"\n  needs at least 56 days since last calving";

        public LocalDate? KnownOn { get; init; }

        public static string Answer(params string[] events) => new Farm().Judged("2026-08-20", events).Answer.ToString();

        public AnimalJudgement Judged(string on, params string[] events)
        {
            _file = $"use \"vocabulary.byre\"\n\nrules for {List}\n\n{Rule}\n  because \"so\"\n  source \"common practice\"\n\nrecords \"records\"\n  up to 2026-09-20\n  {Keeps}\n\n"
                + $"programme \"P\"\n  collection on 2026-10-12\n  choose {List} from \"7\", judged on {on}{Use}\n";
            var reading = RulebookReader.Read("farm.byre", this, KnownOn)!;
            reading.Problems.Where(problem => problem.Severity == Language.Diagnostics.Severity.Error).ShouldBeEmpty();
            var herd = HerdReader.Read(
                Encoding.UTF8.GetBytes("animal,born,sex,origin\n7,2020-05-01,F,home-bred\n"),
                Encoding.UTF8.GetBytes("date,animal,kind,value,unit,method\n" + string.Join('\n', events.Select(Row)) + "\n"),
                reading.Rulebook.Vocabulary, reading.Rulebook.Records, KnownOn);
            return new Judge(reading.Rulebook, herd, KnownOn).JudgeOne(reading.Rulebook.Programme!.Choices[0], herd.Find("7"));
        }

        private static string Row(string cells) => cells + new string(',', 5 - cells.Count(letter => letter == ','));

        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(_file) : File.ReadAllBytes(Repository.At("rulesets/" + path));
    }
}
