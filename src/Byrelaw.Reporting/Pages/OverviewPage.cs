using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Pages;

/// <summary>The report's first page: what is dangerous, how the season stands, what is doubted, what to do next.</summary>
public static class OverviewPage
{
    /// <summary>The page.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="named">Every session by name; none where nobody is named.</param>
    /// <param name="folderOf">A list's folder within the report.</param>
    /// <param name="tableOf">The folder of its table for the yards, by the list's name.</param>
    public static Page Of(Draft draft, ImmutableArray<NamedSession> named, Func<ListReport, string> folderOf, Func<string, string> tableOf)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return new Page("index", draft.Rulebook.Programme?.Name ?? "Draft lists", Head(draft),
        [
            Top(draft, named),
            Sessions(draft, named, folderOf),
            Lists(draft, folderOf, tableOf),
            WhatIsDoubted.Of(draft),
            draft.Herd.Problems.IsEmpty ? Part.None : RecordProblems.Said(draft.Herd).As("problems", "problems"),
            Next(draft),
            Calendar(draft),
            Fingerprints.Of(draft),
            CautionsPart.Of(),
        ]);
    }

    /// <summary>How far the records reach, and until when any list of the draft holds.</summary>
    private static PageHead Head(Draft draft) => new(draft.Rulebook.Programme?.Name ?? "",
        [
            ReachWords.Fact(draft.Herd),
            .. draft.Lists.IsEmpty ? ImmutableArray<HeadFact>.Empty : [new("void after", Dates.Long(draft.Lists.Max(list => list.Choice.JudgedTo)))],
            .. draft.KnownOn is { } day ? [new("as known on", Dates.Long(day))] : ImmutableArray<HeadFact>.Empty,
        ])
    {
        Devices = DeviceWords.Of(draft),
        HoldsTo = draft.Lists.IsEmpty ? null : draft.Lists.Max(list => list.Choice.JudgedTo),
    };

    private static Part Top(Draft draft, ImmutableArray<NamedSession> named)
    {
        var part = new DocumentBuilder().Heading(1, draft.Rulebook.Programme is null ? "Draft lists" : "Where the season stands");
        var broken = draft.Lists.Where(list => list.IsBroken).Select(list => list.Choice.List).Distinct().ToList();
        if (broken.Count > 0)
        {
            part.Framed(Frame.Stop, $"{Wording.Bold("Lines of the rule files cannot be read.")} Nobody is Ready on {Phrases.And(broken)}: a broken rule lets no animal through.");
        }

        if (First(draft) is { } list)
        {
            part.Draw(DangerBox.Of(new ListReport(draft, list))).Sentence($"On {Dates.Range(list.Choice.JudgedFrom, list.Choice.JudgedTo)}. Before a hormone see the sheet of that morning: more may stand there.", Tone.Soft);
        }

        return part.Sentence(Trouble(named), Tone.Lead).Bullets(Plans.DecisionWords.Silent(draft, named)).As("top");
    }

    /// <summary>The first list of recipients that is judged; where there is none, the first list.</summary>
    private static ListJudgement? First(Draft draft)
    {
        var recipients = draft.Rulebook.Programme is { } programme ? ProgrammeLists.Recipients(programme)?.List : null;
        return draft.Lists.FirstOrDefault(list => list.Choice.List == recipients) ?? draft.Lists.FirstOrDefault();
    }

    /// <summary>Which sessions have their recipients, and the one in most trouble.</summary>
    private static Wording Trouble(ImmutableArray<NamedSession> named)
    {
        if (named.IsEmpty)
        {
            return "";
        }

        var full = named.Where(session => session.Short == 0).Select(session => $"{session.Number}").ToList();
        var has = full.Count == 0 ? "" : full.Count == 1 ? $"Session {full[0]} has enough recipients named. " : $"Sessions {Phrases.And(full)} have enough recipients named. ";
        return named.Where(session => session.Short > 0).MaxBy(session => session.Short) is not { } worst ? has
            : (Wording)$"{has}{Wording.Bold($"Session {worst.Number} is {worst.Short} short")}{(worst.ToAsk.IsEmpty ? ", and nobody is left to ask." : $", with {worst.ToAsk.Length} to ask.")}";
    }

    private static Part Sessions(Draft draft, ImmutableArray<NamedSession> named, Func<ListReport, string> folderOf)
    {
        if (named.IsEmpty)
        {
            return Part.None;
        }

        var part = new DocumentBuilder().Heading(2, named.Length == 1 ? "The session" : "The sessions");
        foreach (var session in named)
        {
            var list = draft.Lists.Where(list => list.Session == session.Number && list.Choice.List == session.Session.Recipients!.Choice.List).Select(list => new ListReport(draft, list)).First();
            part.Draw(Session(session, list, $"{folderOf(list)}/index.md"));
        }

        return part.As("sessions");
    }

    private static SessionStalls Session(NamedSession session, ListReport list, string page)
    {
        var days = session.Session.Days;
        return new(
            Wording.Link($"Session {session.Number}", page),
            [
                .. session.Named.Select(animal => (LocalDate?)animal.Start).Min() is { } start ? [$"First treatment {Day(start)}"] : Array.Empty<Wording>(),
                .. days.Collection is { } collected ? [$"Collection {Day(collected)}"] : Array.Empty<Wording>(),
                $"Transfer {Day(days.FirstTransfer)}{(days.FinalTransfer > days.FirstTransfer ? $" to {Day(days.FinalTransfer)}" : "")}",
                .. session.Session.Donors is null ? Array.Empty<Wording>() : [$"Donors: {session.Session.Collected.Length}{(session.DonorsToAsk.IsEmpty ? "" : $", and {session.DonorsToAsk.Length} to ask")}"],
            ],
            [
                .. session.Wanted is { } wanted ? [("recipients wanted", $"{wanted}")] : Array.Empty<(string, string)>(),
                ("named", $"{session.Named.Length}"), ("to ask", $"{session.ToAsk.Length}"), .. session.Short is { } few ? [("short", $"{few}")] : Array.Empty<(string, string)>(), ("spare", $"{session.Spares.Length}"),
            ],
            [.. session.Named.Select(animal => Wording.Link(animal.Number, $"{page}#{Anchors.Of(animal.Number)}"))],
            session.Short ?? 0,
            session.Session.IsStopped ? "This session is given up." : $"May be used: {AtBest.Of(list.List)}.");
    }

    private static string Day(LocalDate day) => $"{day.DayOfWeek.ToString()[..3]} {day.Day} {Dates.ShortMonth(day.Month)}";

    private static Part Next(Draft draft) => JobsByPlace.Of(draft) is { IsEmpty: false } columns ? new DocumentBuilder().Heading(2, "Do next").Draw(new JobColumns(columns)).As("next", "next") : Part.None;

    private static Part Lists(Draft draft, Func<ListReport, string> folderOf, Func<string, string> tableOf)
    {
        var table = new Table("The lists of this programme", ["list", "judged for", "animals", .. AnswerWords.All.Select(AnswerWords.Both), "for a spreadsheet"]);
        foreach (var list in draft.Lists.Select(judged => new ListReport(draft, judged)))
        {
            var folder = folderOf(list);
            table.Add([
                Wording.Link(Wording.Bold(Phrases.Sentence(list.NameInSession)), $"{folder}/index.md"),
                list.Days + (list.List.IsBroken ? ": lines of its rules cannot be read, so nobody is Ready" : ""),
                $"{list.List.Animals.Length}",
                .. AnswerWords.All.Select(answer => AnswerWords.Word(answer, list.Use) is var word && word != AnswerWords.Word(answer)
                    ? $"{list.List.Count(answer)} ({word})" : $"{list.List.Count(answer)}"),
                Wording.Link("draft.csv", $"{tableOf(list.Name)}/draft.csv"),
            ]);
        }

        var part = new DocumentBuilder().Heading(2, "The lists");
        return (table.IsEmpty ? part.Sentence("The programme chooses no list.") : part.Table(table)).As("lists");
    }

    private static Part Calendar(Draft draft)
    {
        var dates = draft.Rulebook.Programme?.Dates ?? [];
        return dates.Length == 0 ? Part.None : new DocumentBuilder().Heading(2, "Dates of the programme")
            .Bullets(dates.OrderBy(date => date.Date).Select(date => $"{Phrases.Sentence(date.Name)}: {Dates.Long(date.Date)}")).As("dates");
    }
}
