namespace Byrelaw.Reporting.Pages;

/// <summary>What to find out, who can, for whom, and how many answers hang on it.</summary>
public static class FindOutPart
{
    /// <summary>The part of the list's page.</summary>
    public static DocumentBuilder Of(ListReport list)
    {
        var all = FindOut.Of(list);
        var part = new DocumentBuilder().Heading(2, "What to find out, and for whom");
        var late = list.List.Animals.Where(animal => new AnimalReport(list, animal).IsOutOfTime).Select(animal => animal.Number).ToList();
        if (all.Count == 0 && late.Count == 0)
        {
            return part.Sentence("Nothing: the records answer for everyone.");
        }

        Table(part, list, "In the yards", "Scan, palpate, score, read the tag, look back in the book", all.Where(found => found.Who == SettledBy.Yards));
        Table(part, list, "Laboratory or time", "Sample, send, wait", all.Where(found => found.Who == SettledBy.LaboratoryOrTime));
        return late.Count == 0 ? part : part.Led("No longer in time:", $"{Phrases.And(late)}. What would settle it takes longer than is left.");
    }

    private static void Table(DocumentBuilder part, ListReport list, string heading, string caption, IEnumerable<FindOut> found)
    {
        var table = new Table(caption, "what to do", "by when", "animals", "settles alone", "for");
        foreach (var one in found)
        {
            table.Add(Phrases.Sentence(one.What), one.IsLater ? $"from {list.Short(one.By)}" : list.Short(one.By), $"{one.Numbers.Count}", $"{one.Alone}", string.Join(", ", one.Numbers));
        }

        if (!table.IsEmpty)
        {
            part.Heading(3, heading).Table(table);
        }
    }
}
