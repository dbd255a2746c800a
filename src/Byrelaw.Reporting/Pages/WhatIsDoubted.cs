using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Pages;

/// <summary>What is doubted about the records: one block on a report's first pages, before what to do next.</summary>
public static class WhatIsDoubted
{
    private const string Title = "What is doubted";

    /// <summary>The block of the page for all lists.</summary>
    public static Part Of(Herd herd) => Block(herd, DoubtWords.Of(herd).Select(said => said.Whole())).As("doubted", "doubted");

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
        return herd.Doubted.IsEmpty ? part.Sentence(DoubtWords.Nothing(herd)) : part.Numbered(doubts);
    }

    private static string Asked(SaidDoubt said, ListReport list)
    {
        var asked = list.List.Animals.Count(animal => DoubtsAboutHer.Awaits(animal, said, list.Herd));
        return asked == 0 ? "" : $"On this list {asked} {(asked == 1 ? "is" : "are")} asked about for that.";
    }
}
