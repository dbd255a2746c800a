using Byrelaw.Planning.FindingOut;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Plans;

/// <summary>What the sessions rest on, in a line each: which question settles most of those who are asked about, and how many may be treated and cannot carry.</summary>
internal static class SessionLines
{
    public static IEnumerable<string> Of(Plan plan)
    {
        foreach (var session in plan.Sessions.Where(session => session is { ToAsk.IsEmpty: false, Short: not 0 }))
        {
            if (Question(session, plan.Today.Year) is { } question)
            {
                yield return $"Session {session.Number} rests on questions: {question}";
            }
        }

        if (Treated(plan) is { } treated)
        {
            yield return treated;
        }
    }

    /// <summary>The record that most of them miss, on the days that do for all of these; and how many it settles by itself.</summary>
    private static string? Question(NamedSession session, int year)
    {
        var asked = session.ToAsk.SelectMany(animal => animal.ToFindOut.Where(one => !one.Days.IsEmpty || one.Record.IsAwaited).Select(one => (Animal: animal, One: one)))
            .GroupBy(one => one.One.Record.IsAwaited ? AskedWords.Of(one.One, year) : one.One.Record.Kind.Name).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).FirstOrDefault();
        if (asked is null)
        {
            return null;
        }

        var settled = asked.Count(one => one.Animal.ToFindOut.Length == 1);
        return $"{asked.Key} {(asked.First().One.Record.IsAwaited ? "for" : "of")} {asked.Count()}{OnDays(asked, year)}; {(settled == 0 ? "each of them needs more besides" : $"that settles {Settled(settled, session.ToAsk.Length)}")}.";
    }

    private static string OnDays(IEnumerable<(NamedAnimal Animal, ToFindOut One)> asked, int year)
    {
        var starts = asked.Select(one => one.One.Starts.ToList()).Where(runs => runs.Count > 0).ToList();
        if (starts.Count == 0)
        {
            return "";
        }

        var (first, last) = (starts.Max(runs => runs[0].Start), starts.Min(runs => runs[^1].End));
        return first > last ? ""
            : first == last ? $", on {Dates.Long(first, year)}" : $", {Dates.Long(first, year)} to {Dates.Long(last, year)}";
    }

    private static string Settled(int settled, int all) => settled < all ? $"{settled} of {all}" : all == 1 ? "it" : $"all {all}";

    /// <summary>How many may be treated on the first day, and how many of them can carry nothing.</summary>
    private static string? Treated(Plan plan)
    {
        if (plan.Sessions.IsEmpty || plan.Sessions[0] is not { Session: { Recipients: { } recipients } session }
            || ProgrammeLists.Judged(session.Lists, ProgrammeLists.Treatment(session.Programme)) is not { } treatment || treatment.Choice.JudgedFrom < plan.Today)
        {
            return null;
        }

        var may = treatment.Animals.Where(animal => animal.Answer.MayBeUsed()).Select(animal => animal.Animal).ToHashSet();
        if (may.Count == 0)
        {
            return null;
        }

        var answers = recipients.Animals.Where(animal => may.Contains(animal.Animal)).ToList();
        var carry = answers.Count(animal => animal.Answer.MayBeUsed());
        var others = AnswerWords.All.Where(answer => !answer.MayBeUsed()).Select(answer => (Answer: answer, Count: answers.Count(animal => animal.Answer == answer))).Where(one => one.Count > 0)
            .Select(one => $"{one.Count} {AnswerWords.Word(one.Answer)}").ToList();
        return $"{may.Count} may be treated on {Dates.Long(treatment.Choice.JudgedFrom, plan.Today.Year)}, {(carry == 0 ? "none" : $"{carry}")} of them as recipients of session {session.Number}"
            + (others.Count == 0 ? "." : $"; as recipients the others are: {Phrases.And(others)}.");
    }
}
