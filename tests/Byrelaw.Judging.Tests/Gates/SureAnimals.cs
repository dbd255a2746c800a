using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Language.Rulebooks.Plans;
using Byrelaw.Planning.Calendar;
using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Sessions;

namespace Byrelaw.Judging.Tests.Gates;

/// <summary>Who is sure of which session by which method, once as the program says it and once by the literal evaluator.</summary>
internal static class SureAnimals
{
    /// <summary>The sessions of a farm, judged.</summary>
    public static ImmutableArray<JudgedSession> Sessions(SeasonCase one) => JudgedSession.Of(new Judge(one.Rulebook, one.Herd).JudgeAll(), SeasonCase.Today);

    /// <summary>As the program says it: session, method, animal. Nobody is asked whether finding something out would make her sure: that takes long, and is another test's.</summary>
    public static HashSet<(int, string, int)> Of(ImmutableArray<JudgedSession> sessions) =>
    [
        .. from session in sessions
           from method in session.Programme.Aims.MethodsOf(session.Rulebook.Plans)
           let asking = new Asking(session, MethodChecked.GatesOf(session, method, DayOf(session, method)), SeasonCase.Today)
           from animal in session.Recipients!.Animals
           where asking.AsItIs(animal).Standing == Standing.Sure
           select (session.Number, method.Name, animal.Animal),
    ];

    private static LocalDate DayOf(JudgedSession session, Method method) => TreatmentCalendar.Of(method, session.Days).Start;

    /// <summary>
    /// By the literal evaluator: "sure if both lists say Ready or On course, and `suits` is true": the recipients' list on the transfer days, the treatment list on day 0 where something is
    /// given, `suits` on day 0; day 0 is not before today.
    /// </summary>
    public static HashSet<(int, string, int)> Literal(SeasonCase one, ImmutableArray<JudgedSession> sessions)
    {
        var sure = new HashSet<(int, string, int)>();
        foreach (var session in sessions)
        {
            var moved = MovedProgramme.To(one.Rulebook, "collection", session.Days.Collection!.Value);
            var carrying = moved.Programme!.Choices.Single(choice => choice.List == "recipients");
            var treatment = moved.Programme.Choices.Single(choice => choice.List == "treatment");
            foreach (var method in one.Rulebook.Programme!.Aims.MethodsOf(one.Rulebook.Plans))
            {
                var day = DayOf(session, method);
                var judge = new ReferenceJudge(moved with { Programme = moved.Programme with { Choices = [carrying, treatment with { JudgedFrom = day, JudgedTo = day }] } }, one.Farm);
                var given = treatment with { JudgedFrom = day, JudgedTo = day };
                foreach (var animal in Enumerable.Range(0, one.Farm.Animals.Length).Where(_ => day >= SeasonCase.Today))
                {
                    if (judge.Over(carrying, animal) == Truth.True && (method.IsNatural || judge.Over(given, animal) == Truth.True)
                        && (method.Suits is not { } suits || ConditionReference.At(suits, judge.Knowledge, new Moment(animal, DayNumber.Of(day), false)) == Truth.True))
                    {
                        sure.Add((session.Number, method.Name, animal));
                    }
                }
            }
        }

        return sure;
    }
}
