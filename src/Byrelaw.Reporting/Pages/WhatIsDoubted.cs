using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Pages;

/// <summary>What is doubted about the records: one block on a report's first pages, before what to do next.</summary>
public static class WhatIsDoubted
{
    private const string Title = "What is doubted";

    /// <summary>The block of the page for all lists, with how many on each are asked about.</summary>
    public static Part Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return Block(draft.Herd, DoubtWords.Of(draft.Herd).Select(said => said.Whole(Asked(said, draft)))).As("doubted", "doubted");
    }

    /// <summary>The block of a list's page, with how many on it are asked about.</summary>
    public static DocumentBuilder Said(ListReport list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return Block(list.Herd, DoubtWords.Of(list.Herd).Select(said => said.Whole(Asked(said, list))));
    }

    private static DocumentBuilder Block(Herd herd, IEnumerable<Wording> doubts)
    {
        var part = new DocumentBuilder().Heading(2, Title);
        part.Bullets(OpenSheetWords.Of(herd));
        if (herd.Doubted.IsEmpty)
        {
            return part.Sentence(DoubtWords.Nothing(herd));
        }

        part.Numbered(doubts);
        return DoubtWords.Lines(herd) is { Length: > 0 } lines ? part.Sentence(lines) : part;
    }

    private static string Asked(SaidDoubt said, Draft draft)
    {
        string[] lists = [.. draft.Lists.GroupBy(list => list.Choice.List, list => DoubtsAboutHer.Awaiting(list, said, draft.Herd)).Select(list => (Name: list.Key, Asked: list.SelectMany(numbers => numbers).Distinct().Count()))
            .Where(list => list.Asked > 0).Select(list => $"{list.Asked} on the list “{list.Name}”")];
        return lists.Length == 0 ? "" : $"Asked about for that: {Phrases.And(lists)}.";
    }

    private static string Asked(SaidDoubt said, ListReport list)
    {
        var asked = DoubtsAboutHer.Awaiting(list.List, said, list.Herd).Count();
        return asked == 0 ? "" : $"On this list {asked} {(asked == 1 ? "is" : "are")} asked about for that.";
    }
}
