namespace Byrelaw.Judging.Tests.Promises;

/// <summary>
/// Promises held against the records, worked by hand. That a calf is born 200 to 320 days after a service is common practice,
/// no source; the rest is counting.
/// </summary>
public sealed class ExpectationTests
{
    private const string Services = "mating, transfer, bull in, bull out";

    [Fact]
    public void Calvings_without_a_father_take_the_promises_of_services_away() =>
        Farm(10, fatherless: 1).Fallen().ShouldBe(Services);

    [Fact]
    public void An_expectation_of_which_nobody_can_read_whose_promises_it_is_about_may_be_about_any() => new PromisingFarm
    {
        Animals = ["1,2018-01-01,F"],
        Events = [],
        IsMiswritten = true,
        Own = "expectation \"Ours\"\n  every calving comes 200 to 320 days after mating\n  else matng is not complete, over 2%\n\n",
        Records = "up to 2026-10-04\ncomplete for mating, heat since 2020-01-01",
    }.Fallen().ShouldBe("heat, mating");

    [Fact]
    public void One_calving_in_fifty_is_no_more_than_two_in_a_hundred()
    {
        Farm(50, fatherless: 1).Fallen().ShouldBe("");
        Farm(49, fatherless: 1).Fallen().ShouldBe(Services);
    }

    [Theory]
    [InlineData(199, Services)]
    [InlineData(200, "")]
    [InlineData(320, "")]
    [InlineData(321, Services)]
    public void A_father_is_200_to_320_days_before(int days, string fallen) =>
        Cow($"{Calved.PlusDays(-days):uuuu'-'MM'-'dd},1,mating,", $"{Calved:uuuu'-'MM'-'dd},1,calving,").Fallen().ShouldBe(fallen);

    [Fact]
    public void A_bull_in_her_mob_is_a_father_on_any_of_his_days()
    {
        Cow("2025-09-01,1,bull in,", "2025-12-01,1,bull out,", "2026-08-01,1,calving,").Fallen().ShouldBe("");
        Cow("2025-09-01,1,bull in,", "2025-09-10,1,bull out,", "2026-08-01,1,calving,").Fallen().ShouldBe(Services);
    }

    [Fact]
    public void Calvings_conceived_before_the_promise_do_not_count() =>
        new PromisingFarm
        {
            Animals = ["1,2020-01-01,F"],
            Events = ["2026-08-01,1,calving,"],
            Records = "up to 2026-10-04\ncomplete for mating, transfer, bull in, bull out since 2026-01-01",
        }.Fallen().ShouldBe("");

    [Fact]
    public void What_was_not_written_down_before_a_promise_asks_for_a_reason_and_an_agreement()
    {
        string[] events = ["2022-10-20,3,mating,", "2023-08-01,1,calving,", "2023-08-02,2,calving,", "2023-08-02,3,calving,"];
        const string promise = "up to 2026-10-04\ncomplete for mating, transfer, bull in, bull out since 2026-01-01";
        PromisingFarm Promising(string records) => new() { Animals = ["1,2019-01-01,F", "2,2019-01-01,F", "3,2019-01-01,F"], Events = events, Records = records };
        Promising(promise).Fallen().ShouldBe("");
        string[] early = ["2021-10-20,3,mating,", .. events];
        new PromisingFarm { Animals = ["1,2019-01-01,F", "2,2019-01-01,F", "3,2019-01-01,F"], Events = early, Records = promise }.Fallen().ShouldBe(Services);
        new PromisingFarm
        {
            Animals = ["1,2019-01-01,F", "2,2019-01-01,F", "3,2019-01-01,F"],
            Events = early,
            Records = promise + "\n  because \"The bull has gone.\"\n  agreed by \"farmer\" on 2026-01-01",
        }.Fallen().ShouldBe("");
    }

    [Fact]
    public void A_row_that_may_be_a_calving_counts_against_the_promise() =>
        Cow("2025-10-25,1,mating,", "2026-08-01,1,calving,", "2024-08-01,1,calvng,").Fallen().ShouldBe(Services);

    [Theory]
    [InlineData("2026-08", "2025-10-25", "")]
    [InlineData("2026-08", "2026-01-14", Services)] // 199 days before the first of August, 229 before the last.
    [InlineData("2026-08", "2025-10-14", Services)] // 321 days before the last.
    [InlineData("2026-08", "2025-10-15", "")]
    [InlineData("2026-08", "2026-01-13", "")]
    [InlineData("2026", "2025-10-25", Services)]
    [InlineData("2020-08", "", "")] // No day of it is 320 days after the promise began.
    [InlineData("2020-11", "", Services)] // The last ones are.
    public void A_calving_known_by_its_month_counts_against_the_promise_only_where_one_of_its_days_does(string month, string served, string fallen) =>
        Cow([.. served.Length == 0 ? [] : new[] { $"{served},1,mating," }, $"{month},1,calving,", "2026-01-01,1,lameness,"]).Fallen().ShouldBe(fallen);

    [Theory]
    [InlineData("2025-10-25", "")]
    [InlineData("2025-01-25", Services)]
    public void A_scan_without_its_result_counts_against_the_promise_only_where_a_calf_would_have_no_father(string served, string fallen) =>
        Cow($"{served},1,mating,", "2025-12-20,1,pregnancy test,pending").Fallen().ShouldBe(fallen);

    [Fact]
    public void A_waiver_takes_one_animal_out_and_more_than_one_none()
    {
        const string waive = "waive \"A calf has a father\" for \"0\"\n  because \"Bought in calf; the papers are lost.\"\n  agreed by \"herd vet\" on 2026-09-01\n\n";
        Farm(20, fatherless: 1, waive).Fallen().ShouldBe("");
        Farm(20, fatherless: 2, waive).Fallen().ShouldBe(Services);
        Farm(20, fatherless: 2, waive + waive.Replace("\"0\"", "\"1\"", StringComparison.Ordinal)).Fallen().ShouldBe(Services, "two of twenty are more than two in a hundred, so all count");
    }

    [Theory]
    [InlineData(282, "")]
    [InlineData(240, Services)]
    [InlineData(319, Services)]
    public void A_change_of_an_expectation_is_tried_besides(int days, string fallen) => new PromisingFarm
    {
        Animals = ["1,2018-01-01,F"],
        Events = [$"{Calved.PlusDays(-days):uuuu'-'MM'-'dd},1,mating,", $"{Calved:uuuu'-'MM'-'dd},1,calving,"],
        Own = Change("every calving comes 250 to 310 days after mating or transfer or running with bull"),
    }.Fallen().ShouldBe(fallen);

    [Fact]
    public void A_change_to_fewer_kinds_takes_none_of_the_others_from_what_was_expected()
    {
        var own = Change("every calving comes 250 to 310 days after mating", "else mating is not complete, over 2%");
        Farm(10, fatherless: 1, own).Fallen().ShouldBe(Services);
        new PromisingFarm { Animals = ["1,2018-01-01,F"], Events = ["2025-12-25,1,mating,", $"{Calved:uuuu'-'MM'-'dd},1,calving,"], Own = own }.Fallen().ShouldBe("mating");
    }

    [Theory]
    [InlineData("else mating, transfer, bull in, bull out are not complete, over 10%")]
    [InlineData("every calving comes 150 to 400 days after mating or transfer or running with bull")]
    [InlineData("every calving comes 200 to 320 days after mating or transfer or running with bull or heat")]
    [InlineData("needs at least 1 calving ever")]
    [InlineData("every calving comes after mating")]
    [InlineData("every calving comes 250 to 310 days after mating", "else mating is not complete")]
    public void A_change_that_expects_no_more_or_cannot_be_read_sets_the_promises_aside(params string[] lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        new PromisingFarm
        {
            Animals = ["1,2018-01-01,F"],
            Events = ["2026-06-01,1,heat,"],
            Own = Change(lines),
            IsMiswritten = true,
        }.Fallen().ShouldContain("mating");
    }

    [Fact]
    public void A_change_that_nobody_agreed_to_or_gave_a_reason_for_sets_the_promises_aside() => new PromisingFarm
    {
        Animals = ["1,2018-01-01,F"],
        Events = ["2026-06-01,1,heat,"],
        Own = "change \"A calf has a father\"\n  every calving comes 250 to 310 days after mating\n\n",
        IsMiswritten = true,
    }.Fallen().ShouldBe(Services);

    [Fact]
    public void A_pregnancy_that_never_ended_contradicts_what_else_is_said_of_her_until_she_calves()
    {
        var herd = Cow("2024-02-01,1,mating,", "2024-04-01,1,pregnancy test,pregnant", "2025-10-25,1,mating,", "2026-08-01,1,calving,").Believe();
        var calving = herd.Vocabulary.Calving!.Id;
        Covers(herd, calving, "2024-04-01", "2024-04-01").ShouldBeFalse();
        Covers(herd, calving, "2024-03-31", "2024-03-31").ShouldBeTrue();
        Covers(herd, calving, "2026-07-31", "2026-07-31").ShouldBeFalse();
        Covers(herd, calving, "2026-08-01", "2026-09-01").ShouldBeTrue();
    }

    [Fact]
    public void So_few_lame_cows_are_hard_to_believe_once_one_farm_in_a_hundred_would_have_so_few()
    {
        // Poisson: with 1 a year for 20 cows, 0 found is below 1 in 100 from an expected 4.61 on, which are 92.1 cow-years.
        Lame(herd: 20, years: 4).ShouldBe("");
        Lame(herd: 20, years: 5).ShouldBe("lameness");
        Lame(herd: 20, years: 5, "2024-05-01,1,lameness,").ShouldBe("");
    }

    [Fact]
    public void A_service_book_that_stops_reaches_the_day_before_the_silence_and_the_days_after_it_are_not_covered()
    {
        // Services every third day from May to September of each year, and in 2026 until July only.
        var days = Enumerable.Range(2022, 5).SelectMany(year => Enumerable.Range(0, 50).Select(i => new LocalDate(year, 5, 1).PlusDays(3 * i)))
            .Where(day => day < new LocalDate(2026, 7, 15)).ToList();
        var herd = new PromisingFarm
        {
            Animals = ["1,2018-01-01,F"],
            Events = days.Select(day => $"{day:uuuu'-'MM'-'dd},1,mating,"),
            Records = "up to 2026-09-30\ncomplete for mating since 2020-01-01",
        }.Believe();
        // Two of the last services stand in the silence: it may hold one day for every ten of a year before.
        var mating = herd.Vocabulary.FindKind("mating")!;
        var silent = herd.Doubted.OfType<FallenSilent>().Single();
        (silent.Kind, Day.Date(silent.From)).ShouldBe((mating, new LocalDate(2026, 7, 7)));
        Covers(herd, mating.Id, "2026-07-06", "2026-07-06").ShouldBeTrue();
        Covers(herd, mating.Id, "2026-07-07", "2026-07-07").ShouldBeFalse();
        Covers(herd, mating.Id, "2026-10-01", "2026-10-01").ShouldBeTrue();
    }

    [Theory]
    [InlineData("no transfer, bull in on this farm since 2014-01-01", "")]
    [InlineData("no transfer on this farm since 2026-06-01", "")]
    [InlineData("no mating, transfer, bull in, bull out on this farm since 2014-01-01", Services)]
    [InlineData("no transfer, bull in on this farm since 2014-01-01\ncomplete for mating since 2020-01-01", "mating, transfer, bull in")]
    [InlineData("no transfer, bull in on this farm since 2014-01-01\ncomplete for mating since 2026-01-01\n  because \"From this year on all is written down.\"\n  agreed by \"farmer\" on 2026-01-01", "")]
    [InlineData("no transfer, bull in on this farm since 2014-01-01\ncomplete for mating since 2026-01-01", "mating")]
    public void That_there_are_no_embryos_is_not_contradicted_by_services_that_need_not_be_on_record(string promises, string fallen) => new PromisingFarm
    {
        Animals = Enumerable.Range(0, 9).Select(cow => $"{cow},2018-01-01,F"),
        Events = ["2022-10-20,8,mating,", .. Enumerable.Range(0, 9).Select(cow => $"2025-08-0{cow + 1},{cow},calving,")],
        Records = "up to 2026-10-04\n" + promises,
    }.Fallen().ShouldBe(fallen);

    [Fact]
    public void None_on_this_farm_is_not_believed_where_there_is_one()
    {
        PromisingFarm Without(string events, string animals = "1,2018-01-01,F") => new()
        {
            Animals = animals.Split('\n'),
            Events = [.. events.Length == 0 ? [] : new[] { events }, "2026-06-01,1,heat,"],
            Records = "up to 2026-10-04\nno transfer on this farm since 2019-01-01\nno bull in on this farm since 2019-01-01",
        };
        Without("").Fallen().ShouldBe("");
        Without("2026-05-01,1,transfer,").Fallen().ShouldBe("transfer");
        Without("2018-05-01,1,transfer,").Fallen().ShouldBe("");
        Without("", "1,2018-01-01,F\n2,2026-05-01,M").Fallen().ShouldBe("", "a bull calf of five months");
        Without("", "1,2018-01-01,F\n2,2026-04-01,M").Fallen().ShouldBe("bull in", "six months old since 1 October");
    }

    [Fact]
    public void A_promise_with_an_end_and_a_beginning_again_leaves_out_the_days_between()
    {
        var herd = new PromisingFarm
        {
            Animals = ["1,2018-01-01,F"],
            Events = ["2026-06-01,1,mating,"],
            Records = "up to 2026-10-04\ncomplete for heat since 2024-06-01 until 2026-07-31\ncomplete for heat since 2026-08-15",
        }.Believe();
        var heat = herd.Vocabulary.FindKind("heat")!.Id;
        Covers(herd, heat, "2024-06-01", "2026-07-31").ShouldBeTrue();
        Covers(herd, heat, "2026-07-31", "2026-08-15").ShouldBeFalse();
        Covers(herd, heat, "2026-08-15", "2026-10-04").ShouldBeTrue();
    }

    private static string Change(params string[] lines) =>
        $"change \"A calf has a father\"\n{string.Concat(lines.Select(line => $"  {line}\n"))}  because \"Ours are carried so long.\"\n  agreed by \"herd vet\" on 2026-09-01\n\n";

    private static readonly LocalDate Calved = new(2026, 8, 1);

    private static bool Covers(Herd herd, int kind, string from, string to) => herd.Coverage.Covers(
        0, kind, Day.Number(LocalDatePattern.Iso.Parse(from).Value), Day.Number(LocalDatePattern.Iso.Parse(to).Value), strict: false);

    private static PromisingFarm Cow(params string[] events) => new() { Animals = ["1,2018-01-01,F"], Events = events };

    /// <summary>Cows that calved this August, served 282 days before, but for the first ones.</summary>
    private static PromisingFarm Farm(int cows, int fatherless, string own = "") => new()
    {
        Animals = Enumerable.Range(0, cows).Select(cow => $"{cow},2018-01-01,F"),
        Events = Enumerable.Range(0, cows).SelectMany(cow => new[]
        {
            cow < fatherless ? "" : $"{Calved.PlusDays(-282):uuuu'-'MM'-'dd},{cow},mating,", $"{Calved:uuuu'-'MM'-'dd},{cow},calving,",
        }).Where(row => row.Length > 0),
        Own = own,
    };

    private static string Lame(int herd, int years, params string[] found) => new PromisingFarm
    {
        Animals = Enumerable.Range(1, herd).Select(cow => $"{cow},2010-01-01,F"),
        Events = Enumerable.Range(1, herd).Select(cow => $"2015-01-01,{cow},calving,").Concat(found),
        Records = $"up to 2026-10-04\ncomplete for lameness since {2026 - years}-10-05",
    }.Fallen();
}
