using Byrelaw.Judging;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.Calendar;

/// <summary>A first treatment that nobody sets is the earliest day 0 of the methods that may be used.</summary>
public sealed class FirstTreatmentTests
{
    private static WrittenPlan Farm(string prepare) => new()
    {
        IsTreatmentLeftOut = true,
        Programme = $"collection on 2026-10-12, 2 times every 14 days\ntransfer 8 days after collection, over 2 days{prepare}",
    };

    [Theory]
    [InlineData("\nprepare recipients by \"Progesterone insert\"", "2026-10-04")]
    [InlineData("\nprepare recipients by \"Prostaglandin once\"", "2026-10-10")]
    [InlineData("\nprepare recipients by \"Prostaglandin once\", \"Progesterone insert\"", "2026-10-04")]
    [InlineData("", "2026-10-04")]
    [InlineData("\nprepare recipients by \"Natural heat\", \"Prostaglandin once\"", "2026-10-10")]
    public void It_is_the_earliest_day_0_of_the_methods_that_may_be_used(string prepare, string day)
    {
        // Transfers on 20 and 21 October want heats of the 12th to the 14th, best of the 13th: nine days after an insert goes in, about three after one prostaglandin.
        var rulebook = Farm(prepare).Rulebook;
        rulebook.Programme!.Date("first treatment").ShouldBe(NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value);
        var treatment = rulebook.Programme.Choices.Single(choice => choice.List == "treatment");
        treatment.JudgedFrom.ShouldBe(rulebook.Programme.Date("first treatment")!.Value);
    }

    [Fact]
    public void In_each_session_it_has_its_own_day()
    {
        var farm = Farm("\nprepare recipients by \"Progesterone insert\", \"Prostaglandin once\"");
        var rulebook = farm.Rulebook;
        var sessions = JudgedSession.Of(new Judge(rulebook, farm.Herd(rulebook)).JudgeAll(), new(2026, 8, 1));
        sessions.Select(session => session.Programme.Date("first treatment")).ShouldBe([new(2026, 10, 4), new(2026, 10, 18)]);
        foreach (var session in sessions)
        {
            session.Programme.Date("first treatment").ShouldBe(session.Programme.Aims.MethodsOf(rulebook.Plans).Min(method => TreatmentCalendar.Of(method, session.Days).Start));
        }
    }

    [Fact]
    public void What_is_written_stands_and_without_a_treatment_there_is_no_day()
    {
        var said = new WrittenPlan { Programme = "collection on 2026-10-12\ntransfer 8 days after collection\ndate first treatment 20 days before first transfer" };
        said.Rulebook.Programme!.Date("first treatment").ShouldBe(new LocalDate(2026, 9, 30));
        var natural = Farm("\nprepare recipients by \"Natural heat\"") with { Lists = "\n  choose recipients from \"2\", judged from first transfer to final transfer\n" };
        natural.Rulebook.Programme!.Date("first treatment").ShouldBeNull();
    }
}
