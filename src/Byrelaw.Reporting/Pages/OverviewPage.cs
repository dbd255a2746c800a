namespace Byrelaw.Reporting.Pages;

/// <summary>The report's first page: the programme and its lists.</summary>
public static class OverviewPage
{
    /// <summary>The page.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="folderOf">A list's folder within the report.</param>
    /// <param name="tableOf">The folder of its table for the yards, by the list's name.</param>
    public static Page Of(Draft draft, Func<ListReport, string> folderOf, Func<string, string> tableOf)
    {
        var title = draft.Rulebook.Programme?.Name ?? "Draft lists";
        return new Page("index", title, Head(draft),
        [
            new DocumentBuilder().Heading(1, title).Sentence(Danger(draft)).As("top"),
            Lists(draft, folderOf, tableOf),
            WhatIsDoubted.Of(draft.Herd),
            Calendar(draft),
            Fingerprints.Of(draft),
            new DocumentBuilder().Heading(2, "Cautions").Bullets(SafetyNotes.General).As("cautions"),
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

    /// <summary>On the days of the first list of recipients that is judged; where there is none, of the first list.</summary>
    private static Wording Danger(Draft draft)
    {
        var recipients = draft.Rulebook.Programme is { } programme ? ProgrammeLists.Recipients(programme)?.List : null;
        return (draft.Lists.FirstOrDefault(list => list.Choice.List == recipients) ?? draft.Lists.FirstOrDefault()) is { } list ? DangerLine.Of(draft, list) : "";
    }

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

        var part = new DocumentBuilder();
        return (table.IsEmpty ? part.Sentence("The programme chooses no list.") : part.Table(table)).As("lists");
    }

    private static Part Calendar(Draft draft)
    {
        var dates = draft.Rulebook.Programme?.Dates ?? [];
        return dates.Length == 0 ? Part.None : new DocumentBuilder().Heading(2, "Dates of the programme")
            .Bullets(dates.OrderBy(date => date.Date).Select(date => $"{Phrases.Sentence(date.Name)}: {Dates.Long(date.Date)}")).As("dates");
    }
}
