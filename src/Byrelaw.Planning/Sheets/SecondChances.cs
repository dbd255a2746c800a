using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.Sheets;

/// <summary>
/// Whoever is begun by a method with a second chance, and surely was not seen in heat in time, is treated once more: for the session that a heat then serves, where she may
/// carry in it, and passes the safety rules for treatment on that day. Whether a heat was seen is asked of the book: where nobody promises to write heats down, nobody is.
/// </summary>
internal static class SecondChances
{
    /// <summary>Each with her day and the session.</summary>
    public static IEnumerable<SecondChanceOf> Of(Plan plan) =>
        from begun in plan.Sessions.SelectMany(session => session.Named).Where(animal => animal.IsBegun)
        let method = plan.Draft.Rulebook.Plans.Method(begun.Method)
        where method?.Again is not null && IsNotSeen(plan, begun, method.Again)
        from one in Next(plan, begun, method)
        select one;

    /// <summary>The first day of the second chance on which a heat serves a session, and all holds of her.</summary>
    private static IEnumerable<SecondChanceOf> Next(Plan plan, NamedAnimal begun, Method method)
    {
        var (from, to) = (begun.Start.PlusDays(method.Again!.From), begun.Start.PlusDays(method.Again.To));
        return DayRuns.From(LocalDate.Max(from, plan.Today), to)
            .SelectMany(day => plan.Sessions.Where(session => MayBeUsed(session.Session, begun.Animal, method, day)).Select(session => new SecondChanceOf(session, begun, method, day))).Take(1);
    }

    private static bool MayBeUsed(JudgedSession session, int animal, Method method, LocalDate day) =>
        !session.IsStopped
        && HeatWindow.HeatsBy(method).Any(heat => session.Days.Window.Serves(day.PlusDays(heat.Day)))
        && session.Recipients!.Animals.FirstOrDefault(one => one.Animal == animal) is { } carrying && carrying.Answer.MayBeUsed()
        && session.Safety.Holds(ProgrammeLists.Treatment(session.Programme), animal, day);

    /// <summary>Whether no heat was seen from day 0 on, for sure: by a day that the records reach.</summary>
    private static bool IsNotSeen(Plan plan, NamedAnimal begun, SecondChance again)
    {
        var (herd, last) = (plan.Draft.Herd, begun.Start.PlusDays(again.NotSeenBy));
        if (herd.Vocabulary.FindKind("heat") is not EventKind heat || last > herd.KnownDay)
        {
            return false;
        }

        var none = new CountCondition(new CountTest(Comparison.Exactly, 0, 0), [new(heat)], [new SinceDate(new(null, begun.Start)) { Span = default }]) { Span = default };
        return plan.Sessions[0].Session.Judge.TruthsOn(none, last)[begun.Animal] == Truth.True;
    }
}

/// <summary>One animal that is treated once more.</summary>
/// <param name="Session">For which session.</param>
/// <param name="Animal">She, with her first day 0.</param>
/// <param name="Method">The method.</param>
/// <param name="Day">When: a new day 0 of hers, once it is on record.</param>
internal sealed record SecondChanceOf(NamedSession Session, NamedAnimal Animal, Method Method, LocalDate Day);
