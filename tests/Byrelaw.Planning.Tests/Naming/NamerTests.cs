using Byrelaw.Judging;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.Naming;

public sealed class NamerTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    private const string Two = """
        collection on 2026-10-12, 2 times every 14 days
        transfer 8 days after collection, over 2 days
        date first treatment 8 days before collection
        """;

    private const string All = """

        choose treatment from females, judged on first treatment
        choose recipients from females, judged from first transfer to final transfer

        """;

    // Copper of 1 August lies within 60 days of both sessions' transfers, the last of which is on 30 September.
    private static ImmutableArray<string> Ready(params ReadOnlySpan<int> cows) =>
        [.. cows.ToArray().SelectMany(cow => new[] { $"2026-05-01,{cow},calving,,", $"2026-08-01,{cow},serum copper,20,umol/L" })];

    private static ImmutableArray<NamedSession> Named(WrittenPlan farm, LocalDate? today = null)
    {
        var rulebook = farm.Rulebook;
        return Namer.Name(new Judge(rulebook, farm.Herd(rulebook)).JudgeAll(), today ?? Today);
    }

    private static WrittenPlan Farm(string more = "", params ReadOnlySpan<int> ready) => new()
    {
        Programme = $"collection on 2026-09-07, 2 times every 14 days\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare 2 recipients by \"Progesterone insert\"{more}",
        Lists = All,
        Events = Ready(ready),
    };

    [Fact]
    public void Each_session_has_its_own_days_and_an_animal_one_place()
    {
        var sessions = Named(Farm("", 1, 2, 3));
        sessions.Select(session => session.Methods[0].Day).ShouldBe([new(2026, 8, 30), new(2026, 9, 13)]);
        sessions.Select(session => string.Join(' ', session.Named.Select(animal => animal.Number))).ShouldBe(["1 2", "3"]);
        sessions.Select(session => session.Short).ShouldBe([0, 1]);
        sessions[1].Named[0].Before.ShouldBe([new TakenPlaces(1, 2, 0)]);
    }

    [Fact]
    public void Who_is_not_known_to_be_fit_is_never_named_and_is_asked_about_where_there_is_time()
    {
        // Cow 4 has no copper on record: a sample can still be taken. Cows 2 and 3 have just calved.
        var sessions = Named(Farm("", 1) with { Events = [.. Ready(1), "2026-05-01,4,calving,,", "2026-07-31,2,calving,,", "2026-07-31,3,calving,,"] });
        sessions[0].Named.ShouldHaveSingleItem().Number.ShouldBe("1");
        sessions[0].ToAsk.ShouldHaveSingleItem().Number.ShouldBe("4");
        sessions[0].Short.ShouldBe(1);
    }

    [Fact]
    public void A_method_is_for_those_it_suits_and_who_suits_nobody_knows_is_not_treated()
    {
        const string Choosy = """
            method "Choosy"
              suits at least 1 mastitis in the last 60 days
              day 0 "Inject"
              counts as heat on day 2
              because "b"

            """;
        var farm = new WrittenPlan
        {
            Programme = "collection on 2026-09-07\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare recipients by \"Choosy\", \"Progesterone insert\"",
            More = Choosy,
            Lists = All,
            Events = [.. Ready(1, 2), "2026-07-31,2,mastitis,,"],
        };
        var named = Named(farm).ShouldHaveSingleItem().Named;
        named.Select(animal => (animal.Number, animal.Method)).ShouldBe([("1", "Progesterone insert"), ("2", "Choosy")]);
    }

    [Fact]
    public void A_method_whose_first_day_is_past_treats_nobody_and_a_session_that_is_over_is_not_judged()
    {
        var late = Named(Farm("", 1, 2, 3), today: new(2026, 8, 31));
        late[0].Methods[0].Animals.ShouldAllBe(animal => animal.Failed == FailedCheck.TooLate);
        late[0].Named.ShouldBeEmpty();
        late[1].Named.Select(animal => animal.Number).ShouldBe(["1", "2"]);
        Named(Farm("", 1, 2, 3), today: new(2026, 9, 17)).ShouldHaveSingleItem().Number.ShouldBe(2);
    }

    [Fact]
    public void Without_a_list_for_treatment_nobody_is_named_for_what_is_given()
    {
        var session = Named(Farm("", 1, 2) with { Lists = "\n  choose recipients from females, judged from first transfer to final transfer\n" })[0];
        session.Named.ShouldBeEmpty();
        session.Methods[0].Animals.ShouldAllBe(animal => animal.Failed == FailedCheck.NoListForTreatment);
    }

    [Fact]
    public void A_booking_names_and_opens_no_gate()
    {
        var sessions = Named(Farm("\nprepare \"3\", \"4\" by \"Progesterone insert\" for session 1", 1, 2, 3));
        sessions[0].Named.Select(animal => (animal.Number, animal.IsBooked)).ShouldBe([("1", false), ("3", true)]);
        sessions[0].BookedAndOut.ShouldBeEmpty();
        sessions[0].ToAsk.ShouldHaveSingleItem().Number.ShouldBe("4", "her copper is not known, and her place is kept while that is asked");
        sessions[1].Named.ShouldHaveSingleItem().Number.ShouldBe("2");
        var out1 = Named(Farm("\nprepare \"3\" by \"Progesterone insert\" for session 1") with { Events = [.. Ready(3).Where(row => !row.Contains("calving", StringComparison.Ordinal)), "2026-07-31,3,calving,,"] })[0];
        out1.Named.ShouldBeEmpty();
        out1.BookedAndOut.ShouldHaveSingleItem().Booking.Animal.ShouldBe("3");
    }

    [Fact]
    public void Who_is_begun_stays_on_her_own_day_and_a_hormone_for_another_reason_begins_nobody()
    {
        // Day 0 of the first session is 30 August; cow 2 was begun a day late, cow 3 for the second session, cow 1 had a hormone without a method.
        var late = new LocalDate(2026, 9, 1);
        var sessions = Named(Begun("2026-08-30,1,hormone given,,,,,", "2026-08-31,2,hormone given,,,Progesterone insert,,0", "2026-08-31,3,hormone given,,,Progesterone insert,2,"), late);
        sessions[0].Named.Select(animal => (animal.Number, animal.Start, animal.IsBegun)).ShouldBe([("2", new LocalDate(2026, 8, 31), true)]);
        sessions[0].BegunAndNotNamed.ShouldBeEmpty();
        sessions[1].Named.Select(animal => (animal.Number, animal.IsBegun)).ShouldBe([("1", false), ("3", true)]);
    }

    [Fact]
    public void Who_is_begun_and_no_longer_safe_is_told_and_not_counted()
    {
        // Served the day after: the safety rule of the list, and the floor, do not hold on the day on which the device comes out.
        var farm = Begun("2026-08-30,2,hormone given,,,Progesterone insert,,0", "2026-08-31,2,mating,,,,,");
        var session = Named(farm, new(2026, 9, 1))[0];
        session.Named.ShouldBeEmpty();
        session.BegunAndNotNamed.ShouldHaveSingleItem().State.ShouldBe(BegunState.NotSafe);
    }

    [Fact]
    public void A_step_that_is_past_and_not_on_record_takes_her_out_of_the_numbers()
    {
        var missed = Begun("2026-08-30,2,hormone given,,,Progesterone insert,,0");
        Named(missed, new(2026, 9, 9))[0].BegunAndNotNamed.ShouldHaveSingleItem().State.ShouldBe(BegunState.StepMissing);
        var given = Begun("2026-08-30,2,hormone given,,,Progesterone insert,,0", "2026-09-06,2,hormone given,,,Progesterone insert,,", "2026-09-08,2,hormone given,,,Progesterone insert,,9");
        Named(given, new(2026, 9, 9))[0].Named.ShouldHaveSingleItem().Start.ShouldBe(new LocalDate(2026, 8, 30));
    }

    [Theory]
    [InlineData("Prostaglandin once,,7")]
    [InlineData(",,")]
    [InlineData("Progesterone insert,,9")]
    [InlineData("Progesterone insert,,seven")]
    [InlineData("Progesterone insert,,7,gone")]
    [InlineData("Progesterone insert,,7,in")]
    public void What_was_given_that_day_for_another_reason_is_not_her_step(string row)
    {
        var farm = Begun("2026-08-30,2,hormone given,,,Progesterone insert,,0,in", $"2026-09-06,2,hormone given,,,{row}");
        Named(farm, new(2026, 9, 7))[0].BegunAndNotNamed.ShouldHaveSingleItem().State.ShouldBe(BegunState.StepMissing);
    }

    [Fact]
    public void A_row_that_cannot_be_read_begins_and_counts_nobody()
    {
        var session = Named(Begun("2026-08-30,2,hormone given,,,Progesterone insert,1,nought"), new(2026, 9, 1))[0];
        session.BegunAndNotNamed.ShouldHaveSingleItem().State.ShouldBe(BegunState.RowUnreadable);
        session.Named.ShouldNotContain(animal => animal.Number == "2");
    }

    [Fact]
    public void A_donor_who_was_begun_as_a_recipient_is_told_and_not_named()
    {
        var farm = Begun("2026-08-30,2,hormone given,,,Progesterone insert,,0");
        var session = Named(farm with { Lists = "\n  choose donors from \"2\", judged on collection\n" + All }, new(2026, 9, 1))[0];
        session.Named.ShouldNotContain(animal => animal.Number == "2");
        session.BegunAndNotNamed.ShouldHaveSingleItem().State.ShouldBe(BegunState.IsDonor);
    }

    [Fact]
    public void For_a_session_that_is_stopped_nobody_is_named_and_who_is_begun_is_told()
    {
        var farm = Begun("2026-08-30,2,hormone given,,,Progesterone insert,1,0");
        farm = farm with { More = farm.More + "stopped session 1\n  because \"Too few.\"\n  agreed by \"farmer\" on 2026-08-31\n" };
        var sessions = Named(farm, new(2026, 9, 1));
        sessions[0].Named.ShouldBeEmpty();
        sessions[0].ToAsk.ShouldBeEmpty();
        sessions[0].Methods[0].Animals.ShouldAllBe(animal => animal.Failed == FailedCheck.Stopped);
        sessions[0].BegunAndNotNamed.ShouldHaveSingleItem().State.ShouldBe(BegunState.Stopped);
        sessions[1].Named.ShouldNotBeEmpty();
    }

    private static WrittenPlan Begun(params ReadOnlySpan<string> rows)
    {
        var farm = Farm("", 1, 2, 3);
        return farm with
        {
            More = "event hormone given  marks treatment, with method is text, with session is number, with step is number, with device is one of \"in\", out, gone\n",
            Columns = "date,animal,kind,value,unit,method,session,step,device",
            UpTo = new(2026, 9, 9),
            Events = [.. farm.Events.Concat(rows.ToArray()).Select(row => row + new string(',', 8 - row.Count(sign => sign == ',')))],
        };
    }

    [Fact]
    public void A_donor_that_is_named_carries_nobodys_embryo()
    {
        var farm = Farm("", 1, 2) with { Lists = "\n  choose donors from \"1\", judged on collection\n" + All };
        Named(farm)[0].Named.ShouldHaveSingleItem().Number.ShouldBe("2");
    }

    [Fact]
    public void With_one_session_the_lists_are_those_of_the_programme()
    {
        var farm = new WrittenPlan { Programme = Two.Replace(", 2 times every 14 days", "", StringComparison.Ordinal), Events = Ready(1, 2, 3) };
        var (rulebook, lists) = farm.Judged();
        var draft = new Judge(rulebook, farm.Herd(rulebook)).JudgeAll();
        var session = JudgedSession.Of(draft, Today).ShouldHaveSingleItem();
        session.Lists.ShouldBe(draft.Lists);
        session.Days.Programme.Choices.ShouldBe(rulebook.Programme!.Choices);
        lists.Length.ShouldBe(session.Lists.Length);
        SessionDraft.Of(rulebook, farm.Herd(rulebook), null).Lists.Select(Answers).ShouldBe(lists.Select(Answers));

        static string Answers(ListJudgement list) => $"{list.Choice.List} {list.Choice.JudgedFrom} {list.Choice.JudgedTo}: {string.Join(", ", list.Animals.Select(animal => $"{animal.Number} {animal.Answer}"))}";
    }
}
