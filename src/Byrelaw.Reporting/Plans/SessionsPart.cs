using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Plans;

/// <summary>Session by session: who is made ready, on which day, and what is short.</summary>
internal static class SessionsPart
{
    public static Part Of(Plan plan)
    {
        if (plan.Sessions.IsEmpty)
        {
            return Part.None;
        }

        var part = new DocumentBuilder().Heading(2, "Who, session by session")
            .Sentence(NobodyToTreat(plan))
            .Bullets(Notes(plan));
        part.Sentence("An animal is named only if she surely may be treated on her day 0 and surely may carry on the days of transfer, by the records as they are. "
            + "Her status is looked up again that morning, and a licensed vet orders what is given.");
        foreach (var session in plan.Sessions)
        {
            Add(part, plan, session);
        }

        return part.As("sessions");
    }

    /// <summary>Said before any count: without a list that says who may be treated nobody is named for a method that gives something.</summary>
    private static string NobodyToTreat(Plan plan) => ProgrammeLists.Treatment(plan.Draft.Rulebook.Programme!) is null && plan.Sessions.Any(session => session.Methods.Any(method => !method.Method.IsNatural))
        ? "No list says who may be treated, so nobody is named for a method that gives something: add `choose treatment from females, judged on first treatment`, with rules for treatment." : "";

    private static void Add(DocumentBuilder part, Plan plan, NamedSession session)
    {
        var year = plan.Today.Year;
        part.Heading(3, $"Session {session.Number}: transfer on {Dates.Range(session.Session.Days.FirstTransfer, session.Session.Days.FinalTransfer)}");
        part.Bullets(Lines(session, year));
    }

    private static IEnumerable<Wording> Lines(NamedSession session, int year)
    {
        foreach (var (method, start, numbers) in Groups(session.Named.Where(animal => animal.IsBegun)))
        {
            yield return $"Begun by {method} on {Dates.Long(start, year)}: {Wording.Bold(string.Join(", ", numbers))}.";
        }

        foreach (var (method, start, numbers) in Groups(session.Named.Where(animal => !animal.IsBegun)))
        {
            yield return $"{method}, from {Dates.Long(start, year)}: {Wording.Bold(string.Join(", ", numbers))}.";
        }

        foreach (var one in session.BegunAndNotNamed)
        {
            yield return $"{session.Session.Judge.Herd.Numbers[one.Animal]} is begun by {one.Method.Name} on {Dates.Long(one.Start, year)} and not counted: {CheckWords.Of(one)}.";
        }

        if (session.ToAsk.Where(animal => animal.OpenSheet is not null).ToList() is { Count: > 0 } onSheets)
        {
            yield return $"On a sheet that is not on record yet, so {(onSheets.Count == 1 ? "she keeps her place" : "they keep their places")} and {(onSheets.Count == 1 ? "is" : "are")} not counted on: {Phrases.And([.. onSheets.Select(animal => $"{animal.Number} (row {animal.OpenSheet!.Row} of sheet {animal.OpenSheet.Sheet})")])}. Record it.";
        }

        foreach (var alike in session.ToAsk.Where(animal => animal.OpenSheet is null).GroupBy(animal => AskedWords.All(animal.ToFindOut, year)))
        {
            yield return $"To ask about first, and not treated before: {Phrases.And([.. alike.Select(animal => animal.Number)])}{(alike.Key.Length == 0 ? "" : $" ({alike.Key})")}.";
        }

        foreach (var waiting in AskedWords.Waiting(session.ToAsk.SelectMany(animal => animal.ToFindOut).SelectMany(one => one.Waiting)))
        {
            yield return waiting;
        }

        foreach (var alike in session.DonorsToAsk.GroupBy(donor => AskedWords.All(donor.ToFindOut, year)))
        {
            yield return $"{(alike.Count() == 1 ? "Donor" : "Donors")} to ask about: {Phrases.And([.. alike.Select(donor => donor.Number)])}{(alike.Key.Length == 0 ? "" : $" ({alike.Key})")}.";
        }

        if (!session.Spares.IsEmpty)
        {
            var standBy = session.StandBy.Length;
            yield return $"Spare, the best first: {string.Join(", ", session.Spares.Select(animal => animal.Number))}."
                + (standBy == 0 || standBy == session.Spares.Length ? "" : $" The first {standBy} stand on the sheets, to be treated in place of whoever is left out; nothing is planned of the others.");
        }

        if (!session.Watched.IsEmpty)
        {
            yield return $"Watched for a heat of their own by {session.Watched[0].Method}, given nothing and taking no place: {string.Join(", ", session.Watched.Select(animal => animal.Number))}.";
        }

        if (!session.WatchedIfKnown.IsEmpty)
        {
            yield return $"Asked about only so as to be watched by {session.WatchedIfKnown[0].Method}, and taking no place: {string.Join(", ", session.WatchedIfKnown.Select(animal => animal.Number))}. What is asked of each stands with the tasks.";
        }

        foreach (var one in session.BookedAndOut)
        {
            yield return $"{one.Booking.Animal} is booked and not named: {CheckWords.Of(one.Failed)}.";
        }

        foreach (var alike in session.Named.Where(animal => !animal.Before.IsEmpty).GroupBy(animal => Phrases.And([.. animal.Before.Select(Taken)])))
        {
            var numbers = alike.Select(animal => animal.Number).ToList();
            yield return $"{Phrases.And(numbers)} {(numbers.Count == 1 ? "stands" : "stand")} here and not earlier: {alike.Key}.";
        }
    }

    private static IEnumerable<(string Method, LocalDate Start, IEnumerable<string> Numbers)> Groups(IEnumerable<NamedAnimal> named) =>
        named.GroupBy(animal => (animal.Method, animal.Start)).OrderBy(group => group.Key.Start).Select(group => (group.Key.Method, group.Key.Start, group.Select(animal => animal.Number)));

    private static string Taken(TakenPlaces taken)
    {
        var better = taken.Places - taken.CannotGoElsewhere;
        var parts = new List<string>();
        if (taken.CannotGoElsewhere > 0)
        {
            parts.Add($"{taken.CannotGoElsewhere} {(taken.CannotGoElsewhere == 1 ? "is taken by one that can" : "are taken by animals that can")} go nowhere else");
        }

        if (better > 0)
        {
            parts.Add($"{better} {(parts.Count > 0 ? "" : better == 1 ? "is taken " : "are taken ")}by {(better == 1 ? "a better one" : "better ones")}");
        }

        return $"of session {taken.Session}'s {Numbers.Count(taken.Places, "place", "places")} {Phrases.And(parts)}";
    }

    private static IEnumerable<string> Notes(Plan plan)
    {
        yield return "Short is how many are wanted less those named; those to ask about stand beside it and never fill it. Spare are those who could be named and have no place.";
        foreach (var session in plan.Sessions.Where(session => session.Wanted is null))
        {
            yield return $"How many session {session.Number} wants is not said, so everyone who surely may is named.";
        }
    }
}
