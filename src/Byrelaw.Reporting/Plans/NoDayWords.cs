using Byrelaw.Judging.Supposing;
using Byrelaw.Planning.LeadTimes;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Plans;

/// <summary>Says of whom something cannot be found out in time for a session, and for which later one it can. No empty stretch of days is shown as a task.</summary>
internal static class NoDayWords
{
    public static IEnumerable<string> Of(Plan plan)
    {
        var year = plan.Today.Year;
        foreach (var task in plan.Calendar.Tasks.Where(task => !task.WithoutADay.IsEmpty))
        {
            foreach (var alike in task.WithoutADay.GroupBy(number => StillCounts(plan, task, number)))
            {
                yield return $"{TaskWords.Name(task)}: {(task.Task.Due is null ? "" : $"due by {Dates.Long(task.Due, year)}, ")}no day of it is left for {Phrases.And([.. alike])}.{alike.Key}";
            }
        }

        foreach (var late in TooLateTask.Of(plan.Draft.Rulebook).Where(late => !(DoneOn(plan, late) <= late.By)))
        {
            yield return $"{late.Task.Name}: due {Dates.Long(late.Due, year)}; {Quoted.Of(late.Rule.Name)} asks on {Dates.Long(late.JudgedOn, year)} that it is done by {Dates.Long(late.By, year)}."
                + (DoneOn(plan, late) is { } done ? $" It is said done on {Dates.Long(done, year)}." : "");
        }

        foreach (var session in plan.Sessions)
        {
            foreach (var alike in session.DonorsNotInTime.GroupBy(donor => Why(donor, year)))
            {
                yield return $"{Phrases.And([.. alike.Select(donor => donor.Number)])}: {alike.Key}, and donors are judged on {Dates.Long(session.Session.Donors!.Choice.JudgedFrom, year)}: not for session {session.Number}.";
            }

            foreach (var alike in Late(session).GroupBy(one => (Why: Why(one, year), Later: Else(plan, session, one.Animal))))
            {
                var method = session.Methods.First(one => !one.Method.IsNatural);
                var numbers = alike.Select(one => session.Session.Judge.Herd.Numbers[one.Animal]).ToList();
                yield return $"{Phrases.And(numbers)}: {alike.Key.Why}, and {method.Method.Name} starts on {Dates.Long(method.Days.Start, year)}: not by it for session {session.Number}.{alike.Key.Later}";
            }
        }
    }

    /// <summary>A record that is late by the farm's task counts all the same: what of hers does, and on which days.</summary>
    private static string StillCounts(Plan plan, TaskDates task, string number)
    {
        var still = plan.Sessions.Where(session => session.Number == task.Session).SelectMany(session => session.ToAsk.Concat(session.WatchedIfKnown).Concat(session.DonorsToAsk)).Where(animal => animal.Number == number)
            .SelectMany(animal => animal.ToFindOut).Where(one => !one.Days.IsEmpty && task.Settles(one.Record)).ToList();
        return still.Count == 0 ? "" : $" By the rules it still counts: {AskedWords.All(still, plan.Today.Year)}.";
    }

    private static LocalDate? DoneOn(Plan plan, TooLateTask late) => plan.Draft.Rulebook.Plans.Done.Where(done => done.Task == late.Task.Name).Select(done => (LocalDate?)done.On).FirstOrDefault();

    private static string Why(DonorNotInTime donor, int year) => donor.Closed is { IsTaken: true } closed && closed.First > closed.Last
        ? Why(new TooLate(0, closed.Kind.Name, closed.First, closed.ResultsAfter, IsBarredUntil: false), year) : "what is asked about cannot be found out in time";

    private static string Why(TooLate one, int year) => one.IsBarredUntil
        ? $"not treated before {Dates.Long(one.From, year)}, and only with {one.Kind} on record"
        : $"{one.Kind} counts from {Dates.Long(one.From, year)}{(one.Takes > 0 ? $" and its result takes {Numbers.Count(one.Takes, "day", "days")}" : "")}";

    /// <summary>Those of whom something counts too late for the method that is liked best, and who are not asked about by another that treats.</summary>
    private static IEnumerable<TooLate> Late(NamedSession session)
    {
        if (session.Methods.FirstOrDefault(method => !method.Method.IsNatural) is not { } liked)
        {
            yield break;
        }

        for (var animal = 0; animal < liked.Animals.Length; animal++)
        {
            if (liked.Animals[animal].Closed is { IsTaken: true } closed && closed.First > closed.Last && session.Methods.All(method => method.Method.IsNatural || method.Animals[animal].Standing == Standing.Out))
            {
                yield return new(animal, closed.Kind.Name, closed.First, closed.ResultsAfter, IsBarredUntil: false);
            }
            else if (liked.Animals[animal].Failed == FailedCheck.Treatment && IsAskedLater(session, animal) is { } later)
            {
                yield return new(animal, later.What, later.From, 0, IsBarredUntil: true);
            }
        }
    }

    /// <summary>Of one who may not be treated on day 0 and is still to be asked about later on: what, and from when.</summary>
    private static (string What, LocalDate From)? IsAskedLater(NamedSession session, int animal) =>
        ProgrammeLists.Judged(session.Session.Lists, ProgrammeLists.Treatment(session.Session.Programme))?.Animals.FirstOrDefault(one => one.Animal == animal) is { Answer: Answer.Later, NotBefore: { } from, ThenAsk: [var first, ..] }
            ? (first.Subject, from) : null;

    /// <summary>What is left: to be watched in this session, or a later one.</summary>
    private static string Else(Plan plan, NamedSession session, int animal) => session.WatchedIfKnown.FirstOrDefault(one => one.Animal == animal) is { } watched
        ? $" For session {session.Number} she can only be watched, by {watched.Method}: {AskedWords.All(watched.ToFindOut, plan.Today.Year)}." : Later(plan, session, animal);

    /// <summary>Where she is asked about for a later session: by which method, and on which days.</summary>
    private static string Later(Plan plan, NamedSession session, int animal)
    {
        foreach (var later in plan.Sessions.Where(one => one.Number > session.Number))
        {
            if (later.ToAsk.Concat(later.WatchedIfKnown).FirstOrDefault(one => one.Animal == animal) is { } asked)
            {
                return $" For session {later.Number} by {asked.Method}: {AskedWords.All(asked.ToFindOut, plan.Today.Year)}.";
            }
        }

        return "";
    }

    /// <summary>One of whom something is known too late.</summary>
    /// <param name="Animal">Her place in the herd.</param>
    /// <param name="Kind">What is to be found out.</param>
    /// <param name="From">The first day on which that counts; of one who is barred, on which she may be treated.</param>
    /// <param name="Takes">So many days its result takes.</param>
    /// <param name="IsBarredUntil">Whether until then she may not be treated whatever is found out.</param>
    private readonly record struct TooLate(int Animal, string Kind, LocalDate From, int Takes, bool IsBarredUntil);
}
